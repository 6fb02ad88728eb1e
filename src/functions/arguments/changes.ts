import {
  PROJECTED_ITEMS,
  projectedChanges,
  type ProjectedChanges,
  type ProjectedItem,
} from "../../calculation/liability/projectedChanges";
import { ZERO, type Decimal } from "../../money/dollars";
import { cellValue, shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { readArgument, type RangeKind } from "./argumentKind";
import { signedDollars } from "./dollars";
import { labeledRows, labelOf } from "./returnItems";

/** The differences from last year as rows of label and difference. A blank range is no change. */
export const changes: RangeKind<ProjectedChanges> = {
  id: "change-rows",
  title: "Rows of label and difference",
  description:
    "A range of two columns, a label and the difference from last year in dollars, negative for a decrease. Blank rows are ignored. Some labels cannot be used in a projection. If the argument is left out, nothing changed.",
  accepted: ['{"wages",-5000}', '{"business profit",12000;"children under 17",1}'],
  notAccepted: ['{"withholding",100}'],
  takes: "range",
  whenBlank: { means: projectedChanges({}) },
  read: (range, name) => {
    const differences: Partial<Record<ProjectedItem, Decimal>> = {};
    for (const { place, item, cell } of labeledRows(name, range)) {
      const difference = readArgument(signedDollars, place, cell);
      const projected = PROJECTED_ITEMS.find((known) => known === item);
      if (projected === undefined)
        throw new InputError(
          place,
          `"${labelOf(item)}" cannot be used in a projection. Use EXT.LIABILITY with all items of the return.`
        );
      if (projected === "childrenUnder17" && !difference.isInteger())
        throw new InputError(
          place,
          `${shown(cellValue(cell))} is not a number of persons. Enter a whole number such as 1.`
        );
      differences[projected] = (differences[projected] ?? ZERO).plus(difference);
    }
    return projectedChanges(differences);
  },
};
