import { ZERO } from "../../money/dollars";
import { cellValue, isBlankOrZero, isEmptyCell } from "../cells/cellValue";
import { rowsOf } from "../cells/columns";
import { InputError } from "../cells/inputError";
import { optional, readArgument, type RangeKind } from "./argumentKind";
import type { ClientListField } from "./clientListHeadings";
import type { OwnHeadings } from "./ownHeadings";
import { readHeadings, type HeadingReading } from "./readHeadings";
import { dollars } from "./dollars";
import { yesOrNo } from "./yesNo";

/** More clients than any practice has. A host needs seconds for as many rows. */
const MOST_ROWS = 20_000;

/** A client list as the host passed it: a row of headings, then one row per client. */
export interface ClientList {
  readonly headings: readonly unknown[];
  readonly rows: readonly (readonly unknown[])[];
}

/** A row of a client list. */
export interface ClientListRow {
  /** Its cell of a column, blank where the list has no such column. Several parts of the payments are added. */
  readonly cell: (field: ClientListField) => unknown;
  /** Whether the row has the total of the list, which is no client. */
  readonly isTotal: boolean;
  /** Whether the row has the headings of the list again, as some printed lists do. */
  readonly isHeadings: boolean;
}

/** A client list: a row of headings, then one row per client. */
export const clientList: RangeKind<ClientList> = {
  id: "client-list",
  title: "Client list",
  description:
    "A range of cells: a row of headings, then one row per client. Columns can be in any order. The list must have the estimated total tax and the payments: their total, or parts such as withholding and estimated tax payments, which are added. `ROSTERHEADINGS` shows how each heading is read. A row whose name begins with Total is not a client.",
  accepted: ['{"Client","Total tax","Payments";"Alder",20000,15000}'],
  notAccepted: ['{"Client","Total tax"}'],
  takes: "range",
  whenBlank: { enter: "Select the whole client list with its headings." },
  read: (range, name) => {
    const [headings, ...rows] = rowsOf(range);
    if (!headings || rows.length === 0)
      throw new InputError(
        name,
        "The range has no row below its headings. Select the whole client list."
      );
    if (rows.length > MOST_ROWS)
      throw new InputError(
        name,
        `The list has ${rows.length.toLocaleString("en-US")} rows. Use one formula for each ${MOST_ROWS.toLocaleString("en-US")} rows or fewer.`
      );
    return { headings, rows };
  },
};

/** The headings of a client list: a row of cells. */
export const listHeadings: RangeKind<readonly unknown[]> = {
  id: "list-headings",
  title: "Headings of a list",
  description:
    "The row of cells with the headings of your client list, as far as its columns go. `ROSTERHEADINGS` shows how each heading is read.",
  accepted: ['{"Client","Total tax","Payments"}'],
  notAccepted: ['{"Client";"Total tax"}'],
  takes: "range",
  whenBlank: { enter: "Select the row of headings of your client list." },
  read: (range, name) => {
    const [headings = [], ...others] = rowsOf(range);
    if (others.length > 0)
      throw new InputError(
        name,
        `The range has ${String(others.length + 1)} rows. Select only the row of headings.`
      );
    return headings;
  },
};

/** Rows of a client list, without its headings. */
export const listRows: RangeKind<readonly (readonly unknown[])[]> = {
  id: "list-rows",
  title: "Rows of a list",
  description:
    "One row or several rows of your client list, with the same columns as its headings.",
  accepted: ['{"Alder",20000,15000}'],
  notAccepted: [],
  takes: "range",
  whenBlank: { means: [[]] },
  read: (range, name) => {
    const rows = rowsOf(range);
    if (rows.length === 0)
      throw new InputError(name, "The range is empty. Select at least one row of your list.");
    return rows;
  },
};

/** The payments of a row whose parts are in several columns: their sum in dollars, blank if all are blank. */
function addedParts(row: readonly unknown[], parts: readonly HeadingReading[]): unknown {
  const given = parts.filter(({ index }) => !isEmptyCell(row[index]));
  if (given.length === 0) return null;
  const amounts = given.map(({ index, heading }) =>
    readArgument(optional(dollars, ZERO), `payments (${heading.trim()})`, row[index])
  );
  return amounts.reduce((sum, amount) => sum.plus(amount), ZERO).toNumber();
}

/**
 * The clients of a list.
 *
 * @param list - The list.
 * @param name - The argument, for the error message.
 * @param taxYear - The tax year of the list, for headings with a year.
 * @param own - The user's own headings.
 * @returns The reading of the headings, and each row; `undefined` for a blank row.
 * @throws InputError for headings that cannot be read.
 */
export function clientsOf(
  list: ClientList,
  name: string,
  taxYear: number | undefined,
  own: OwnHeadings
): {
  readonly reading: readonly HeadingReading[];
  readonly clients: readonly (ClientListRow | undefined)[];
} {
  const reading = readHeadings(name, list.headings, taxYear, own);
  const columns = new Map<ClientListField, HeadingReading[]>();
  for (const one of reading) {
    if (one.field === undefined) continue;
    columns.set(one.field, [...(columns.get(one.field) ?? []), one]);
  }
  const used = [...columns.values()].flat();
  const clients = list.rows.map((row) => {
    if (used.every(({ index }) => isEmptyCell(row[index]) || row[index] === 0)) return undefined;
    const cell = (field: ClientListField): unknown => {
      const [first, ...others] = columns.get(field) ?? [];
      if (!first) return null;
      return others.length === 0 ? row[first.index] : addedParts(row, [first, ...others]);
    };
    const first = row.find((one) => !isEmptyCell(one));
    return {
      cell,
      isTotal: TOTAL.test(textOf(cell("client"))) || TOTAL.test(textOf(first)),
      isHeadings: used.every(({ index, heading }) => row[index] === heading),
    };
  });
  return { reading, clients };
}

const TOTAL = /^\s*(grand |sub-?)?totals?\b/i;

function textOf(cell: unknown): string {
  return typeof cell === "string" ? cell : "";
}

/** A cell of the record of the request: no in place of a date says that there is none. */
export function recordCell(cell: unknown): unknown {
  return planInstead(cell) === false ? null : cell;
}

/** Whether a cell of a date says yes or no instead, as a column "Extension filed" can; `undefined` if it says neither. */
export function planInstead(cell: unknown): boolean | undefined {
  const value = cellValue(cell);
  return isBlankOrZero(value) || typeof value === "number" ? undefined : yesOrNo(value);
}
