import type { Decimal } from "../../money/dollars";
import { completedItems } from "./completedItems";
import { item, type ReturnItem, type ReturnItems } from "./returnItems";

/** A change of one item from last year. */
export interface ItemChange {
  readonly item: ReturnItem;
  /** What `value` is: an amount to add, a fraction of last year's amount to add, or the new amount itself. */
  readonly kind: "difference" | "fraction" | "newAmount";
  /** Dollars or persons, or a fraction such as 0.05; negative for a decrease. */
  readonly value: Decimal;
}

/**
 * The items of the new year: those of last year with the changes that are expected.
 *
 * An item that was not known last year starts from zero. A fraction is taken of last year's amount, also where the same item has
 * other changes, so that the order of the changes does not matter.
 *
 * @param priorYearItems - Last year's items, dollars.
 * @param changes - Any number of changes for each item. The last new amount replaces what came before it.
 * @returns The items, dollars, not rounded. An item may become negative although the law has no such amount.
 *
 * @example
 * // wages 80,000, with wages 5% more and interest 200 //=> wages 84,000, interest 200
 */
export function projectedItems(
  priorYearItems: ReturnItems,
  changes: readonly ItemChange[]
): ReturnItems {
  const items: Partial<Record<ReturnItem, Decimal>> = { ...priorYearItems };
  const completed = completedItems(priorYearItems);
  for (const name of new Set(changes.map((change) => change.item))) {
    const lastYear = item(completed, name);
    items[name] = changes
      .filter((change) => change.item === name)
      .reduce((amount, { kind, value }) => {
        if (kind === "newAmount") return value;
        return amount.plus(kind === "fraction" ? lastYear.times(value) : value);
      }, lastYear);
  }
  return items;
}
