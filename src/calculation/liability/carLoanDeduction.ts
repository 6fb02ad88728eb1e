import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/**
 * Deduction for 2025 through 2028 for interest on a loan for a new car.
 *
 * The cap applies first. The deduction is then reduced by $200 for each $1,000, or part of $1,000, of income above the threshold.
 * A separate filer may take it.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param interest - Dollars paid.
 * @param adjustedGrossIncome - Dollars.
 * @param rules - Cap, thresholds and reduction.
 * @returns Dollars, not rounded; zero before 2025.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 163(h)(4)
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
  const threshold = figureForStatus(figures.carLoanThreshold, status);
  const steps = atLeastZero(adjustedGrossIncome.minus(threshold)).div(figures.carLoanStep).ceil();
  const capped = Decimal.min(interest, figures.carLoanCap);
  return atLeastZero(capped.minus(steps.times(figures.carLoanLostPerStep)));
}
