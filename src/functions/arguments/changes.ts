import { YES_OR_NO } from "../../calculation/liability/returnItems";
import type { ItemChange } from "../../calculation/liability/projectedItems";
import { Decimal, ZERO } from "../../money/dollars";
import { cellValue, shown, type CellValue } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { readArgument, type RangeKind } from "./argumentKind";
import { signedDollars } from "./dollars";
import { MOST_PERSONS } from "./itemLabels";
import { labeledRows, type LabeledRow } from "./returnItems";
import { yesNo } from "./yesNo";

/** A change of an item, with the argument and the row, as an error message names them. */
export interface ChangeRow extends ItemChange {
  readonly place: string;
}

/** A percent below 10,000%, with its sign. */
const PERCENT = /^([-+]?)(\d{1,4}(?:\.\d{0,9})?|\.\d{1,9})\s*%$/;

function isPercent(value: CellValue): value is string {
  return typeof value === "string" && value.trim().endsWith("%");
}

function fractionOf(place: string, text: string): Decimal {
  const written = PERCENT.exec(text.trim());
  if (!written)
    throw new InputError(
      place,
      `${shown(text)} is not a percent. Enter a percent below 10,000%, such as 5% or -10%, or dollars.`
    );
  const fraction = new Decimal(written[2] ?? "0").div(100);
  return written[1] === "-" ? fraction.negated() : fraction;
}

function changeOf({ place, item, cell }: LabeledRow): ChangeRow {
  const value = cellValue(cell);
  if (YES_OR_NO.includes(item)) {
    const isOne = readArgument(yesNo, place, cell);
    return { place, item, kind: "newAmount", value: isOne ? ZERO.plus(1) : ZERO };
  }
  const isCount = MOST_PERSONS[item] !== undefined;
  if (isPercent(value) && !isCount)
    return { place, item, kind: "fraction", value: fractionOf(place, value) };
  const difference = isPercent(value) ? undefined : readArgument(signedDollars, place, cell);
  if (difference === undefined || (isCount && !difference.isInteger()))
    throw new InputError(
      place,
      `${shown(value)} is not a number of persons. Enter a whole number such as 1 or -1.`
    );
  return { place, item, kind: "difference", value: difference };
}

/** The changes from last year as rows of label and dollars or percent. A blank range is no change. */
export const changes: RangeKind<readonly ChangeRow[]> = {
  id: "change-rows",
  title: "Rows of label and change",
  description:
    'A range of two columns, a label and the change from last year: dollars, negative for a decrease, or a percent of last year\'s amount typed as text, such as `"5%"` or `"-10%"`. A number is always dollars: a cell formatted as a percent contains 0.05, which is 5 cents. Type `\'5%` with the apostrophe, or format the cell as text first. Numbers of persons change by whole numbers, and a yes or no is the new answer. A label without an amount last year starts from 0, and takes dollars only. Qualified dividends are part of ordinary dividends: if both change, enter both. Repeated labels add up, and blank rows are ignored. Withholding and other payments are accepted and do not change total tax. If the argument is left out, nothing changed.',
  accepted: ['{"wages",-5000}', '{"business profit","-10%";"children under 17",1}'],
  notAccepted: ['{"wages","5 percent"}', '{"children under 17","50%"}', '{"wages","20000%"}'],
  takes: "range",
  whenBlank: { means: [] },
  read: (range, name) => labeledRows(name, range, changeOf),
};
