import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { rateColumn } from "./rateColumn";

/**
 * Itemized deductions as far as the highest rate lets them count: from 2026 they are cut by 2/37 of the lesser of the deductions
 * and the income above the edge of the 37% bracket.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param deductions - Dollars itemized, every other limit applied.
 * @param incomeBefore - Dollars of income that they are taken from.
 * @param rules - The cut, and the edge of the highest rate.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a year that is not held.
 * @see 26 U.S.C. 68, as amended by Pub. L. 119-21, section 70111
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
  const edge = entryOn(rules.incomeTaxRates, begins).figures[`${rateColumn(status)}35`];
  const above = atLeastZero(incomeBefore.minus(edge));
  const cut = Decimal.min(deductions, above).times(numerator).div(denominator);
  return deductions.minus(cut);
}
