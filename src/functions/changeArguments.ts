import {
  PROJECTED_ITEMS,
  projectedChanges,
  type ProjectedChanges,
  type ProjectedItem,
} from "../calculation/liability/projectedChanges";
import { InputError } from "../inputError";
import { ZERO, type Decimal } from "../money/dollars";
import { cellValue, shown } from "./cells";
import { labelledRows } from "./itemArguments";
import { ITEM_LABELS } from "./itemLabels";
import { signedMoney } from "./moneyArguments";

/**
 * Reads what is different from last year, from rows of label and difference; falls are negative.
 *
 * @param name - The argument, for the message.
 * @param argument - A block two columns wide, or nothing.
 * @returns The differences, added up.
 * @throws InputError naming the row whose label is unknown, or is one that a projection does not know.
 */
export function changes(name: string, argument: unknown): ProjectedChanges {
  const differences: Partial<Record<ProjectedItem, Decimal>> = {};
  const rows = argument === null || argument === undefined ? [] : labelledRows(name, argument);
  for (const { place, item, cell } of rows) {
    const difference = signedMoney(place, cell);
    const known = PROJECTED_ITEMS.find((projected) => projected === item);
    if (known === undefined) {
      const label = ITEM_LABELS[item][0] ?? item;
      throw new InputError(
        place,
        `"${label}" is nothing a projection knows; give the whole return to EXT.LIABILITY`
      );
    }
    if (known === "childrenUnder17" && !difference.isInteger())
      throw new InputError(place, `${shown(cellValue(cell))} is no number of persons`);
    differences[known] = (differences[known] ?? ZERO).plus(difference);
  }
  return projectedChanges(differences);
}
