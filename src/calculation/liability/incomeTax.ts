import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { gainTax } from "./gainTax";
import { ordinaryTax } from "./ordinaryTax";

/**
 * Income tax, line 16: Tax Table or worksheet, with net capital gain and qualified dividends at capital gain rates.
 *
 * The steps of the Qualified Dividends and Capital Gain Tax Worksheet, which gives the smaller of the tax with the capital gain rates
 * and the tax without them. Gains at 25% and 28% are not calculated.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param taxableIncome - Dollars, preferential income included.
 * @param preferentialIncome - Dollars of net long-term gain and qualified dividends.
 * @param rules - Brackets and rows of the Tax Table by year.
 * @returns Dollars, rounded only where the Tax Table rounds.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 1(h), (j)(5); Instructions for Form 1040, line 16
 *
 * @example
 * incomeTax(2025, "single", 60_000, 0) //=> 8120
 */
export function incomeTax(
  taxYear: TaxYear,
  status: FilingStatus,
  taxableIncome: Decimal,
  preferentialIncome: Decimal,
  rules: Pick<Rulebook, "incomeTaxRates" | "taxTable" | "capitalGainRates">
): Decimal {
  const all = ordinaryTax(taxYear, status, taxableIncome, rules);
  if (!preferentialIncome.greaterThan(0)) return all;
  const ordinary = atLeastZero(taxableIncome.minus(preferentialIncome));
  const gain = Decimal.min(taxableIncome, preferentialIncome);
  const { figures } = entryOn(rules.capitalGainRates, taxYear.firstDay);
  const onGain = gainTax(status, ordinary, gain, figures);
  return Decimal.min(ordinaryTax(taxYear, status, ordinary, rules).plus(onGain), all);
}
