import { closest } from "fastest-levenshtein";
import {
  MAY_BE_NEGATIVE,
  type ReturnItem,
  type ReturnItems,
} from "../calculation/liability/returnItems";
import { InputError } from "../inputError";
import { ZERO, type Decimal } from "../money/dollars";
import { cellValue, isBlank, isBlankOrZero, isEmptyCell, shown } from "./cells";
import { ITEM_LABELS } from "./itemLabels";
import { money, signedMoney } from "./moneyArguments";
import { pairedRows } from "./pairedRows";
import { yesNo } from "./wordArguments";

/** Items that count persons, and how many there may be. */
const MOST_PERSONS: Readonly<Partial<Record<ReturnItem, number>>> = {
  childrenUnder17: 30,
  otherDependents: 30,
  aged: 2,
  blind: 2,
};
const LONGEST_COMPARED = 60;

/** A label as it is compared: small letters, everything but letters and digits taken for a space. */
function plainLabel(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, " ")
    .trim();
}

const items = new Map<string, ReturnItem>();
const firstLabels = new Map<ReturnItem, string>();
for (const [name, labels] of Object.entries(ITEM_LABELS)) {
  for (const label of labels) items.set(plainLabel(label), name as ReturnItem);
  firstLabels.set(name as ReturnItem, labels[0] ?? name);
}
const everyLabel = [...items.keys()];

function itemOf(place: string, text: string): ReturnItem {
  const label = plainLabel(text);
  const known = items.get(label);
  if (known) return known;
  const nearest = items.get(closest(label.slice(0, LONGEST_COMPARED), everyLabel));
  const name = nearest === undefined ? "wages" : (firstLabels.get(nearest) ?? nearest);
  throw new InputError(place, `${shown(text)} is no label of a return; the nearest is "${name}"`);
}

function amountOf(place: string, name: ReturnItem, cell: unknown): Decimal {
  if (name === "specifiedService") return yesNo(place, cell) ? ZERO.plus(1) : ZERO;
  const amount = MAY_BE_NEGATIVE.includes(name) ? signedMoney(place, cell) : money(place, cell);
  const most = MOST_PERSONS[name];
  if (most !== undefined && (!amount.isInteger() || amount.greaterThan(most))) {
    throw new InputError(place, `${shown(cellValue(cell))} is no number of persons`);
  }
  return amount;
}

/** A row of label and amount, its label understood. */
export interface LabelledRow {
  /** The row, as a message names it. */
  readonly place: string;
  readonly item: ReturnItem;
  readonly cell: unknown;
}

/**
 * Reads rows of label and amount; empty rows and labels without an amount are passed over.
 *
 * @param name - The argument, for the message.
 * @param argument - A block two columns wide.
 * @returns The rows that say something.
 * @throws InputError naming the row at fault, and the nearest label where one is unknown.
 */
export function labelledRows(name: string, argument: unknown): readonly LabelledRow[] {
  const found: LabelledRow[] = [];
  for (const { place, first, second: cell } of pairedRows(name, argument, "label and amount")) {
    const label = cellValue(first);
    if (isBlank(label) || label === 0) {
      if (isBlankOrZero(cellValue(cell))) continue;
      throw new InputError(place, `${shown(cellValue(cell))} stands without a label`);
    }
    const item = itemOf(place, String(label));
    if (!isEmptyCell(cell)) found.push({ place, item, cell });
  }
  return found;
}

/**
 * Reads what is known of a return from rows of label and amount, in any order; repeated labels add up.
 *
 * @param name - The argument, for the message.
 * @param argument - A block two columns wide.
 * @returns The items by name.
 * @throws InputError naming the row at fault, and the nearest label where one is unknown.
 */
export function returnItems(name: string, argument: unknown): ReturnItems {
  const found: Partial<Record<ReturnItem, Decimal>> = {};
  for (const { place, item, cell } of labelledRows(name, argument)) {
    found[item] = (found[item] ?? ZERO).plus(amountOf(place, item, cell));
  }
  if (Object.keys(found).length === 0) {
    throw new InputError(name, "has no item in it; give rows of label and amount");
  }
  return found;
}
