import {
  MAY_BE_NEGATIVE,
  YES_OR_NO,
  type ReturnItem,
  type ReturnItems,
} from "../../calculation/liability/returnItems";
import { ZERO, type Decimal } from "../../money/dollars";
import { cellValue, isBlank, isBlankOrZero, isEmptyCell, shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { pairedRows } from "../cells/pairedRows";
import { readArgument, type RangeKind } from "./argumentKind";
import { dollars, signedDollars } from "./dollars";
import { ITEM_LABELS } from "./itemLabels";
import { labelReader } from "./labels";
import { yesNo } from "./yesNo";

/** Items that are a number of persons, and the largest number accepted. */
export const MOST_PERSONS: Readonly<Partial<Record<ReturnItem, number>>> = {
  childrenUnder17: 30,
  otherDependents: 30,
  aged: 2,
  blind: 2,
};

/** The label of an item that messages use. */
export const labelOf = (item: ReturnItem): string => ITEM_LABELS[item][0] ?? item;

const itemOf = labelReader(ITEM_LABELS);

function amountOf(place: string, item: ReturnItem, cell: unknown): Decimal {
  if (YES_OR_NO.includes(item)) return readArgument(yesNo, place, cell) ? ZERO.plus(1) : ZERO;
  const kind = MAY_BE_NEGATIVE.includes(item) ? signedDollars : dollars;
  const amount = readArgument(kind, place, cell);
  const most = MOST_PERSONS[item];
  if (most !== undefined && (!amount.isInteger() || amount.greaterThan(most)))
    throw new InputError(
      place,
      `${shown(cellValue(cell))} is not a number of persons. Enter a whole number from 0 to ${String(most)}.`
    );
  return amount;
}

/** A row of label and amount whose label is recognized. */
export interface LabeledRow {
  /** The argument and the row, as an error message names them. */
  readonly place: string;
  readonly item: ReturnItem;
  readonly cell: unknown;
}

/**
 * Reads rows of label and amount. Blank rows and labels without an amount are ignored.
 *
 * @param name - The argument, for the error message.
 * @param range - A range of two columns.
 * @returns The rows that have an amount.
 * @throws InputError with the number of the row, and with the closest label where one is not recognized.
 */
export function labeledRows(name: string, range: unknown): readonly LabeledRow[] {
  const found: LabeledRow[] = [];
  for (const { place, first, second: cell } of pairedRows(name, range, "label and amount")) {
    const label = cellValue(first);
    if (isBlank(label) || label === 0) {
      const amount = cellValue(cell);
      if (isBlankOrZero(amount)) continue;
      throw new InputError(place, `${shown(amount)} has no label. Enter a label such as wages.`);
    }
    const item = itemOf(place, String(label));
    if (!isEmptyCell(cell)) found.push({ place, item, cell });
  }
  return found;
}

/** The items of a return as rows of label and amount, in any order. Repeated labels add up. */
export const returnItems: RangeKind<ReturnItems> = {
  id: "item-rows",
  title: "Rows of label and amount",
  description:
    "A range of two columns, a label and dollars in each row, in any order. Repeated labels add up, blank rows are ignored, and case and punctuation do not matter. If a label is not recognized, the error message gives its row and the closest label. Qualified dividends are part of ordinary dividends, and early distributions are part of retirement distributions or pensions: given alone, they count as income. Include a qualified charitable distribution in retirement distributions; it is subtracted from them. Carryovers and credits are positive amounts. For gains, business profit, rents, partnerships and other income, a negative amount is a loss.",
  accepted: ['{"wages",75750}', '{"Schedule C",-2000;"K-1","$1,500";"children under 17",2}'],
  notAccepted: ['{"wagse",100}', '{"wages"}'],
  takes: "range",
  whenBlank: { enter: "Enter rows of label and amount, such as wages and 75750." },
  read: (range, name) => {
    const found: Partial<Record<ReturnItem, Decimal>> = {};
    for (const { place, item, cell } of labeledRows(name, range))
      found[item] = (found[item] ?? ZERO).plus(amountOf(place, item, cell));
    if (Object.keys(found).length === 0)
      throw new InputError(name, "The range has no item. Enter rows of label and amount.");
    return found;
  },
};
