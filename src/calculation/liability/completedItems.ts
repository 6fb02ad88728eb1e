import { Decimal } from "../../money/dollars";
import { item, type ReturnItems } from "./returnItems";

/**
 * The items with those completed that include other items: ordinary dividends are at least the qualified ones, and retirement
 * distributions and pensions together at least the early distributions. So an amount that is given alone still counts as income.
 *
 * @param items - Known items, dollars.
 * @returns The items, dollars.
 * @see IRC section 1(h)(11), 72(t)(1); Form 1040, lines 3a and 3b; Form 5329, line 1
 *
 * @example
 * // early distributions 20,000, pensions 5,000 //=> retirement distributions 15,000
 */
export function completedItems(items: ReturnItems): ReturnItems {
  const early = item(items, "earlyDistributions").minus(item(items, "pensions"));
  return {
    ...items,
    ordinaryDividends: Decimal.max(
      item(items, "ordinaryDividends"),
      item(items, "qualifiedDividends")
    ),
    retirementDistributions: Decimal.max(item(items, "retirementDistributions"), early),
  };
}
