import { once } from "../../calendar/once";
import {
  MAY_BE_NEGATIVE,
  YES_OR_NO,
  type ReturnItem,
  type ReturnItems,
} from "../../calculation/liability/returnItems";
import { ZERO, type Decimal } from "../../money/dollars";
import { cellValue, isBlank, isBlankOrZero, isEmptyCell, shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { isBlankRange } from "../cells/columns";
import { pairedRows, type PairedRow } from "../cells/pairedRows";
import { readRows } from "../cells/readRows";
import { isState } from "../../calculation/state";
import { readArgument, type RangeKind } from "./argumentKind";
import { dollars, signedDollars } from "./dollars";
import { ITEM_KINDS, ITEM_LABELS, MOST_PERSONS, UNCLEAR_LABELS } from "./itemLabels";
import { labelReader } from "./labels";
import { postalCode } from "./stateNames";
import { yesNo } from "./yesNo";

/** The label of an item that messages use. */
export const labelOf = (item: ReturnItem): string => ITEM_LABELS[item][0] ?? item;

/** Whether an item is a payment, which is not part of the tax. */
export const isPayment = (item: ReturnItem): boolean =>
  ITEM_KINDS.some(({ title, items }) => title === "Payments" && item in items);

const itemReader = once(() =>
  labelReader({
    of: ITEM_LABELS,
    unclear: UNCLEAR_LABELS,
    // A payment with a state in its note is probably not a federal one, and a number beside persons may be their number or age.
    noteMatters: (note, item) =>
      (isPayment(item) && isState(postalCode(note))) ||
      (MOST_PERSONS[item] !== undefined && /^(no )?\d+$/.test(note)),
  })
);

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
  /** The label as it was entered, with its note. */
  readonly label: string;
  readonly item: ReturnItem;
  readonly cell: unknown;
}

/** The label and the amount of a row; `undefined` for a blank row and a label without an amount. */
function labeledRow({ place, first, second: cell }: PairedRow): LabeledRow | undefined {
  const label = cellValue(first);
  if (isBlank(label) || label === 0) {
    const amount = cellValue(cell);
    if (isBlankOrZero(amount)) return undefined;
    throw new InputError(place, `${shown(amount)} has no label. Enter a label such as wages.`);
  }
  const item = itemReader()(place, String(label));
  return isEmptyCell(cell) ? undefined : { place, label: String(label).trim(), item, cell };
}

/**
 * Reads rows of label and amount. Blank rows and labels without an amount are ignored.
 *
 * @param name - The argument, for the error message.
 * @param range - A range of two columns.
 * @param read - Reads the amount of a row.
 * @returns What was read from the rows that have an amount.
 * @throws InputError with every row that cannot be read, and with the closest label where one is not recognized.
 */
export function labeledRows<Value>(
  name: string,
  range: unknown,
  read: (row: LabeledRow) => Value
): readonly Value[] {
  const pairs = pairedRows(name, range, "label and amount");
  return readRows(name, pairs, (pair): readonly { readonly value: Value }[] => {
    const row = labeledRow(pair);
    return row === undefined ? [] : [{ value: read(row) }];
  }).flatMap((found) => found.map(({ value }) => value));
}

/** An amount of a return as it was entered. */
export interface EnteredItem {
  /** The label as it was entered, with its note. */
  readonly label: string;
  readonly item: ReturnItem;
  /** Dollars or persons, not rounded. */
  readonly amount: Decimal;
}

function enteredItems(name: string, range: unknown): readonly EnteredItem[] {
  return labeledRows(name, range, ({ place, label, item, cell }) => ({
    label,
    item,
    amount: amountOf(place, item, cell),
  }));
}

/** The items added up. */
export function addedUp(entered: readonly EnteredItem[]): ReturnItems {
  const sums: Partial<Record<ReturnItem, Decimal>> = {};
  for (const { item, amount } of entered) sums[item] = (sums[item] ?? ZERO).plus(amount);
  return sums;
}

/** The items of a return as rows of label and amount, in any order, each as it was entered. */
export const returnRows: RangeKind<readonly EnteredItem[]> = {
  id: "item-rows",
  title: "Rows of label and amount",
  description:
    "A range of two columns, a label and dollars in each row, in any order. Repeated labels add up, blank rows are ignored, and case and punctuation do not matter. A note of your own can follow a label, in parentheses or after a dash with spaces around it: `W-2 (Ana)`, `wages - Ana`. Whose document it is, or which of several, needs neither: `W-2 husband`, `spouse W-2`, `W-2 #2`. If labels are not recognized or can mean several items, the error message gives their rows and the labels to use. Qualified dividends are part of ordinary dividends, and early distributions are part of retirement distributions or pensions: given alone, they count as income. Include a qualified charitable distribution in retirement distributions; it is subtracted from them. Carryovers and credits are positive amounts. For gains, business profit, rents, partnerships and other income, a negative amount is a loss.",
  accepted: [
    '{"wages",75750}',
    '{"W-2 (Ana)",50000;"W-2 (Bo)",41000}',
    '{"W-2 husband",50000;"W-2 wife",41000}',
    '{"Schedule C",-2000;"K-1 ordinary income","$1,500";"children under 17",2}',
  ],
  notAccepted: ['{"wagse",100}', '{"K-1",1500}', '{"withholding (state)",900}', '{"wages"}'],
  takes: "range",
  whenBlank: { enter: "Enter rows of label and amount, such as wages and 75750." },
  read: (range, name) => {
    const found = enteredItems(name, range);
    if (found.length === 0)
      throw new InputError(name, "The range has no item. Enter rows of label and amount.");
    return found;
  },
};

/** The items of a return, added up. */
export const returnItems: RangeKind<ReturnItems> = {
  ...returnRows,
  whenBlank: { enter: "Enter rows of label and amount, such as wages and 75750." },
  read: (range, name, earlier) => addedUp(returnRows.read(range, name, earlier)),
};

/** The same, where a range without an amount means that nothing was paid. */
export const paymentItems: RangeKind<ReturnItems> = {
  ...returnItems,
  id: "payment-item-rows",
  title: "Rows of label and amount, or none",
  description:
    "A range of two columns, as `LIABILITY` takes it: a label and dollars in each row, in any order. Only withholding, estimated payments, the overpayment applied and refundable credits are counted. A blank range, or labels without amounts, mean that nothing was paid.",
  accepted: ['{"withholding",6000;"ES payments",4000}', '{"withholding",""}', '{"",""}'],
  notAccepted: ['{"witholding",100}', '{"withholding","n/a"}', '{"withholding"}'],
  whenBlank: { means: {} },
  read: (range, name) => (isBlankRange(range) ? {} : addedUp(enteredItems(name, range))),
};
