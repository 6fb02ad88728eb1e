import { atLeastZero, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { TaxYear } from "../taxYear";

/**
 * Net earnings from self-employment: 92.35% of net profit, and none where that stays below $400.
 *
 * @param taxYear - The year of the return.
 * @param profit - Dollars of net profit, negative for a loss.
 * @param rules - The share and the least amount.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a year that is not held.
 * @see 26 U.S.C. 1402(a)(12), (b)(2)
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
