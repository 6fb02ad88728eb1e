import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

const STEP = 1_000;

/**
 * Deduction of 2025 to 2028 for interest on a loan for a new car.
 *
 * Held to its cap first, then $200 less for each $1,000 of income above the threshold or part of it. A separate filer has it too.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param interest - Dollars paid.
 * @param adjustedGrossIncome - Dollars.
 * @param rules - Cap and thresholds.
 * @returns Dollars; nothing before 2025.
 * @throws NotInTableError for a year that is not held.
 * @see 26 U.S.C. 163(h)(4)
 *
 * @example
 * carLoanDeduction(2025, "single", 3_000, 100_001) //=> 2800
 */
export function carLoanDeduction(
  taxYear: TaxYear,
  status: FilingStatus,
  interest: Decimal,
  adjustedGrossIncome: Decimal,
  rules: Pick<Rulebook, "additionalDeductions">
): Decimal {
  const { figures } = entryOn(rules.additionalDeductions, taxYear.firstDay);
  const threshold = status === "joint" ? figures.carLoanJoint : figures.carLoanOthers;
  const steps = atLeastZero(adjustedGrossIncome.minus(threshold)).div(STEP).ceil();
  const capped = Decimal.min(interest, figures.carLoanCap);
  return atLeastZero(capped.minus(steps.times(figures.carLoanPerThousand)));
}
