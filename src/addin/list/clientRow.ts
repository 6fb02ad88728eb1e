import { clientsOf, type ClientListRow } from "../../functions/arguments/clientList";
import {
  CLIENT_LIST_HEADINGS,
  type ClientListField,
} from "../../functions/arguments/clientListHeadings";
import type { HeadingReading } from "../../functions/arguments/readHeadings";
import { InputError } from "../../functions/cells/inputError";
import { cellAddress } from "../../host/cellAddress";
import { ownMeanings } from "./ownList";
import type { PaneList } from "./paneList";
import { NotDone } from "../workbook/workbookHost";

/** A client's row of a list, with the reading of the headings. */
export interface ClientRow {
  readonly list: PaneList;
  /** The index of the row in the list. */
  readonly index: number;
  readonly reading: readonly HeadingReading[];
  readonly row: ClientListRow;
}

/** The address of a cell of the list; row and column are counted from 0 below and beside the first ones. */
export function addressIn(list: PaneList, row: number, column: number): string {
  return cellAddress(list.headingRow + 1 + row, list.firstColumn + column);
}

/** The column that is read as a field; several parts of the payments are the first of them. */
export function columnOf(
  reading: readonly HeadingReading[],
  field: ClientListField
): HeadingReading | undefined {
  return reading.find((one) => one.field === field);
}

/**
 * The clients of a list.
 *
 * @param list - The list.
 * @param taxYear - The tax year of a list that has no column for it.
 * @param own - The user's own headings, each with the heading that it means.
 * @returns Each row; `undefined` for one that is blank or has the total of the list.
 * @throws NotDone when the headings are not those of a client list.
 */
export function clientRows(
  list: PaneList,
  taxYear: number,
  own = list.own ?? []
): readonly (ClientRow | undefined)[] {
  try {
    const { reading, clients } = clientsOf(list, "clientList", taxYear, ownMeanings(own));
    return clients.map((row, index) =>
      row === undefined || row.isTotal || row.isHeadings ? undefined : { list, index, reading, row }
    );
  } catch (thrown) {
    if (thrown instanceof InputError) throw new NotDone(withoutArgument(thrown.message));
    throw thrown;
  }
}

/** One client of a list, as {@link clientRows} has it. */
export function clientRow(list: PaneList, index: number, taxYear: number): ClientRow | undefined {
  const rows = list.rows.slice(index, index + 1);
  const [client] = clientRows({ ...list, rows }, taxYear);
  return client && { ...client, list, index };
}

/** A sentence of a function without the argument at its beginning. */
export function withoutArgument(message: string): string {
  return message.replace(/^clientList: /, "");
}

/** What a state's date says first if it depends on the share of the tax that is paid: a list has no column for it. */
const SHARE_UNKNOWN = "percentPaid: The cell is blank. ";

/** What a sentence says of files and arguments that the user of the pane has no use for. */
const NOT_FOR_THE_PANE = / \(rules\/[\w-]+\.json\)|, or set allowUnverified to yes/g;

/** A sentence with the headings of the list instead of the names of arguments. */
function withHeadings(sentence: string, reading: readonly HeadingReading[]): string {
  return sentence.replaceAll(/\b[a-z]+[A-Z]\w*\b/g, (name) => {
    if (!(name in CLIENT_LIST_HEADINGS)) return name;
    const field = name as ClientListField;
    return columnOf(reading, field)?.heading.trim() ?? CLIENT_LIST_HEADINGS[field][0];
  });
}

/**
 * The sentence of a function about an argument, as one about the cell of the list that the argument was read from.
 *
 * @param answered - Such as `state: "Texass" is not a state. …`.
 * @param client - The row that was read.
 * @returns Such as `Cell C5 (State): "Texass" is not a state. …`.
 */
export function sentenceAtCell(answered: string, { list, index, reading }: ClientRow): string {
  const message = answered.replaceAll(NOT_FOR_THE_PANE, "");
  if (message.startsWith(SHARE_UNKNOWN))
    return message.slice(SHARE_UNKNOWN.length).replace(" Enter the percent paid.", "");
  const [whole, name = "", part] = /^(\w+)(?: \(([^)]*)\))?: /.exec(message) ?? [];
  if (whole === undefined || !(name in CLIENT_LIST_HEADINGS)) return message;
  const field = name as ClientListField;
  const column =
    reading.find((one) => one.field === field && one.heading.trim() === part) ??
    columnOf(reading, field);
  const rest = withHeadings(message.slice(whole.length), reading);
  if (column === undefined) {
    const needed = rest.replace(/^The cell is blank\. /, "");
    return `The list has no column "${CLIENT_LIST_HEADINGS[field][0]}". ${needed}`;
  }
  return `Cell ${addressIn(list, index, column.index)} (${column.heading.trim()}): ${rest}`;
}
