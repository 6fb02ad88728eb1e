import { atLeastZero, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/**
 * Deduction for 2025 through 2028 for persons age 65 or older, in addition to the standard or itemized deductions.
 *
 * Income above the threshold reduces the amount of each person, so two persons lose twice as much.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status; a separate filer has no deduction.
 * @param persons - Number of persons age 65 or older, 0 to 2.
 * @param adjustedGrossIncome - Dollars.
 * @param rules - Amount, thresholds and reduction.
 * @returns Dollars, not rounded; zero before 2025.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 151(d)(5)(C)
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
  const threshold = figureForStatus(figures.seniorThreshold, status);
  const lost = atLeastZero(adjustedGrossIncome.minus(threshold)).times(figures.seniorRate);
  return atLeastZero(figures.seniorAmount.minus(lost)).times(persons);
}
