import { atLeastZero, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/**
 * Deduction of 2025 to 2028 for those who are 65 or older, beside the standard or itemized deductions.
 *
 * Income above the threshold takes its share off each person's amount, so that a couple of two loses twice as much.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status; a separate filer has none.
 * @param persons - How many are 65 or older, 0 to 2.
 * @param adjustedGrossIncome - Dollars.
 * @param rules - Amount, thresholds, share.
 * @returns Dollars, not rounded; nothing before 2025.
 * @throws NotInTableError for a year that is not held.
 * @see 26 U.S.C. 151(d)(5)(C)
 *
 * @example
 * seniorDeduction(2025, "joint", 2, 200_000) //=> 6000
 */
export function seniorDeduction(
  taxYear: TaxYear,
  status: FilingStatus,
  persons: number,
  adjustedGrossIncome: Decimal,
  rules: Pick<Rulebook, "additionalDeductions">
): Decimal {
  const { figures } = entryOn(rules.additionalDeductions, taxYear.firstDay);
  if (status === "separate") return ZERO;
  const threshold = status === "joint" ? figures.seniorJoint : figures.seniorOthers;
  const lost = atLeastZero(adjustedGrossIncome.minus(threshold)).times(figures.seniorRate);
  return atLeastZero(figures.seniorAmount.minus(lost)).times(persons);
}
