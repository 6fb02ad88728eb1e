import { atLeastZero, Decimal, ZERO } from "../../money/dollars";
import { BUSINESSES, item, type ReturnItem, type ReturnItems } from "./returnItems";

/**
 * Net investment income: interest, dividends, capital gains and rents.
 *
 * A rental loss counts only as far as the year may deduct it. An excess business loss comes from the businesses with a loss in the
 * proportion of their losses: the law does not say how to divide it.
 *
 * @param items - Known items, dollars, completed.
 * @param gain - Dollars of capital gain or loss in income.
 * @param excessLoss - Dollars of excess business loss.
 * @returns Dollars, not rounded, never below zero.
 * @see IRC section 1411(c)(1)(A) and (B); Form 8960, lines 1 to 8
 */
export function netInvestmentIncome(
  items: ReturnItems,
  gain: Decimal,
  excessLoss: Decimal
): Decimal {
  const lossOf = (name: ReturnItem): Decimal => atLeastZero(item(items, name).negated());
  const losses = BUSINESSES.reduce((sum, name) => sum.plus(lossOf(name)), ZERO);
  const notDeducted = losses.isZero() ? ZERO : excessLoss.times(lossOf("rentalIncome")).div(losses);
  return atLeastZero(
    Decimal.sum(
      item(items, "interest"),
      item(items, "ordinaryDividends"),
      gain,
      item(items, "rentalIncome"),
      notDeducted
    )
  );
}
