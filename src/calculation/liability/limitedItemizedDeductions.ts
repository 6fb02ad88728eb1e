import { atLeastZero, Decimal, ZERO } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { rateColumn } from "./rateColumn";

/**
 * Itemized deductions after the limit at the highest tax rate. From 2026 they are reduced by 2/37 of the deductions or of the income
 * above the start of the 37% bracket, whichever is less.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param deductions - Dollars itemized, after every other limit.
 * @param incomeBefore - Dollars of income from which they are deducted.
 * @param rules - The reduction, and where the highest bracket starts.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 68, as amended by Pub. L. 119-21, section 70111
 *
 * @example
 * limitedItemizedDeductions(2026, "single", 74_000, 740_600) //=> 70000
 */
export function limitedItemizedDeductions(
  taxYear: TaxYear,
  status: FilingStatus,
  deductions: Decimal,
  incomeBefore: Decimal,
  rules: Pick<Rulebook, "itemizedLimit" | "incomeTaxRates">
): Decimal {
  const begins = taxYear.firstDay;
  const { numerator, denominator } = entryOn(rules.itemizedLimit, begins).figures;
  const brackets = entryOn(rules.incomeTaxRates, begins).figures.brackets[rateColumn(status)];
  const highestStarts = brackets.at(-2)?.upTo ?? ZERO;
  const above = atLeastZero(incomeBefore.minus(highestStarts));
  const reduction = Decimal.min(deductions, above).times(numerator).div(denominator);
  return deductions.minus(reduction);
}
