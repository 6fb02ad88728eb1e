import { atLeastZero, Decimal, ZERO } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/** Pay that may be deducted for 2025 through 2028. */
export type DeductiblePay = "tips" | "overtime";

/**
 * Deduction for 2025 through 2028 for qualified tips, or for the premium part of overtime.
 *
 * The cap applies first. The deduction is then reduced by $100 for each whole $1,000 of income above the threshold; a part of $1,000
 * does not count.
 *
 * @param pay - Tips or overtime.
 * @param taxYear - The year of the return.
 * @param status - Filing status; a separate filer has no deduction.
 * @param amount - Dollars received.
 * @param adjustedGrossIncome - Dollars.
 * @param rules - Caps, thresholds and reduction.
 * @returns Dollars, not rounded; zero before 2025.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 224, 225
 *
 * @example
 * workDeduction("tips", 2025, "single", 10_000, 152_999) //=> 9800
 */
export function workDeduction(
  pay: DeductiblePay,
  taxYear: TaxYear,
  status: FilingStatus,
  amount: Decimal,
  adjustedGrossIncome: Decimal,
  rules: Pick<Rulebook, "additionalDeductions">
): Decimal {
  const { figures } = entryOn(rules.additionalDeductions, taxYear.firstDay);
  if (status === "separate") return ZERO;
  const cap = pay === "tips" ? figures.tipsCap : figureForStatus(figures.overtimeCap, status);
  const threshold = figureForStatus(figures.workThreshold, status);
  const steps = atLeastZero(adjustedGrossIncome.minus(threshold)).div(figures.workStep).floor();
  return atLeastZero(Decimal.min(amount, cap).minus(steps.times(figures.workLostPerStep)));
}
