import { projectedItems } from "../../calculation/liability/projectedItems";
import { item, MAY_BE_NEGATIVE, type ReturnItems } from "../../calculation/liability/returnItems";
import type { ChangeRow } from "../arguments/changes";
import { MOST_PERSONS } from "../arguments/itemLabels";
import { labelOf } from "../arguments/returnItems";
import { InputError } from "../cells/inputError";
import { readRows } from "../cells/readRows";

/**
 * Last year's items with the changes of the new year.
 *
 * @param priorYearItems - Last year's items, dollars.
 * @param changes - The rows of changes.
 * @returns The items of the new year, dollars.
 * @throws InputError that names the row and the label, for a percent of an item without an amount last year, and for a change that
 * leaves an amount or a number of persons that LIABILITY does not accept.
 */
export function changedItems(
  priorYearItems: ReturnItems,
  changes: readonly ChangeRow[]
): ReturnItems {
  const items = projectedItems(priorYearItems, changes);
  readRows("changes", changes, ({ place, item: name, kind }) => {
    const label = `"${labelOf(name)}"`;
    const amount = item(items, name);
    const most = MOST_PERSONS[name];
    if (kind === "fraction" && priorYearItems[name] === undefined)
      throw new InputError(
        place,
        `${label} has no amount in priorYearItems, so a percent of it cannot be calculated. Enter dollars.`
      );
    if (most !== undefined && (amount.isNegative() || amount.greaterThan(most)))
      throw new InputError(
        place,
        `${label} would be ${amount.toString()}. Enter a change that leaves a whole number from 0 to ${String(most)}.`
      );
    if (amount.lessThan(0) && !MAY_BE_NEGATIVE.includes(name))
      throw new InputError(
        place,
        `${label} would be ${amount.toString()}. Enter a decrease of no more than last year's amount.`
      );
  });
  return items;
}
