import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { TaxYear } from "../taxYear";
import type { AnnualizationPeriod } from "./annualizationPeriods";

/** Self-employment tax on annualized net earnings, with its parts. Dollars, not rounded. */
export interface AnnualizedSelfEmploymentTax {
  /** The Social Security wage base in proportion to the period. */
  readonly wageBase: Decimal;
  /** What the wages of the period leave of it. */
  readonly room: Decimal;
  readonly socialSecurity: Decimal;
  readonly medicare: Decimal;
  readonly tax: Decimal;
}

/**
 * Self-employment tax of one person on the annualized net earnings of a period, as in Part II of Schedule AI.
 *
 * The net earnings, and the wages that use up the wage base first, are both annualized. The form instead reduces the wage base in
 * proportion and multiplies the tax, which is the same.
 *
 * @param taxYear - The year whose tax is estimated.
 * @param netEarnings - Dollars of net earnings from self-employment in the period, negative for a loss.
 * @param wages - Dollars of wages in the period that were subject to Social Security tax.
 * @param period - The period and its factor.
 * @param rules - Rates and the wage base by year.
 * @returns The tax for the whole year with its parts.
 * @throws NotInTableError for a tax year that the table does not cover.
 * @see 26 U.S.C. 6654(d)(2)(C)(iii), 1402(b); Form 2210, Schedule AI, lines 28 to 36
 *
 * @example
 * // 2025, three months, net earnings 50,000, wages 10,000
 * //=> wage base 44,025, tax 22,677.40
 */
export function annualizedSelfEmploymentTax(
  taxYear: TaxYear,
  netEarnings: Decimal,
  wages: Decimal,
  { factor }: AnnualizationPeriod,
  rules: Pick<Rulebook, "selfEmploymentTax">
): AnnualizedSelfEmploymentTax {
  const { figures } = entryOn(rules.selfEmploymentTax, taxYear.firstDay);
  const earnings = atLeastZero(netEarnings);
  const wageBase = figures.wageBase.div(factor);
  const room = atLeastZero(wageBase.minus(wages));
  const socialSecurity = Decimal.min(earnings, room)
    .times(factor)
    .times(figures.socialSecurityRate);
  const medicare = earnings.times(factor).times(figures.medicareRate);
  return { wageBase, room, socialSecurity, medicare, tax: socialSecurity.plus(medicare) };
}
