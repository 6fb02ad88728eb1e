import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { TaxYear } from "../taxYear";
import { netEarnings } from "./netEarnings";

/**
 * Self-employment tax: the Social Security part up to the wage base, which wages use up first, and the Medicare part on all net
 * earnings.
 *
 * @param taxYear - The year of the return.
 * @param profit - Dollars of net profit; see `netEarnings`.
 * @param wages - Dollars of wages of the same person that were subject to Social Security tax.
 * @param rules - Rates and the wage base by year.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 1401(a), (b)(1), 1402(a)(12), (b); Schedule SE
 *
 * @example
 * selfEmploymentTax(2025, 100_000, 0) //=> 14129.55
 */
export function selfEmploymentTax(
  taxYear: TaxYear,
  profit: Decimal,
  wages: Decimal,
  rules: Pick<Rulebook, "selfEmploymentTax">
): Decimal {
  const { figures } = entryOn(rules.selfEmploymentTax, taxYear.firstDay);
  const earnings = netEarnings(taxYear, profit, rules);
  const room = atLeastZero(figures.wageBase.minus(wages));
  return Decimal.min(earnings, room)
    .times(figures.socialSecurityRate)
    .plus(earnings.times(figures.medicareRate));
}
