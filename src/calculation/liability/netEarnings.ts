import { atLeastZero, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { TaxYear } from "../taxYear";

/**
 * Net earnings from self-employment: 92.35% of net profit, or zero if that is less than $400.
 *
 * @param taxYear - The year of the return.
 * @param profit - Dollars of net profit, negative for a loss.
 * @param rules - The share of profit and the least amount.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 1402(a)(12), (b)(2)
 *
 * @example
 * netEarnings(2025, 433) //=> 0, while 434 gives 400.799
 */
export function netEarnings(
  taxYear: TaxYear,
  profit: Decimal,
  rules: Pick<Rulebook, "selfEmploymentTax">
): Decimal {
  const { figures } = entryOn(rules.selfEmploymentTax, taxYear.firstDay);
  const earnings = atLeastZero(profit).times(figures.netEarningsShare);
  return earnings.lessThan(figures.leastNetEarnings) ? ZERO : earnings;
}
