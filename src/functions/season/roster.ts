import { yearOf } from "../../calendar/calendarDate";
import { readArgument, unread } from "../arguments/argumentKind";
import { answerColumns } from "../arguments/answerColumns";
import {
  clientList,
  clientsOf,
  type ClientList,
  type ClientListRow,
} from "../arguments/clientList";
import type { HeadingReading } from "../arguments/readHeadings";
import { date } from "../arguments/date";
import { ownHeadings, type OwnHeadings } from "../arguments/ownHeadings";
import { assumedRate } from "../arguments/percent";
import { taxYear } from "../arguments/taxYear";
import { BLANK, type AnswerCell } from "../cells/answerCell";
import { cellValue, isBlankOrZero } from "../cells/cellValue";
import { hostError } from "../cells/hostError";
import { InputError } from "../cells/inputError";
import { tableFunction } from "../worksheetFunction";
import { cellOfClient } from "./cellOfClient";
import { rosterClient, rosterTables, type RosterRules } from "./rosterClient";
import {
  DEFAULT_HEADINGS,
  ROSTER_COLUMNS,
  ROSTER_HEADINGS,
  UNREADABLE,
  type RosterHeading,
} from "./rosterColumns";
import { suggestedHeading } from "./suggestedHeading";
import { unreadableCells } from "./unreadableCells";

/** The year of the list, for headings that name one; `undefined` where each client has a year. */
function yearOfList(cell: unknown): number | undefined {
  if (isBlankOrZero(cellValue(cell))) return undefined;
  try {
    return yearOf(readArgument(taxYear, "taxYear", cell).lastDay);
  } catch (thrown) {
    // Each client's row says that the year cannot be read.
    if (thrown instanceof InputError) return undefined;
    throw thrown;
  }
}

/** The client's answers, each calculated for itself: an answer that fails shows its own error. */
function answersOf(
  cell: (name: string) => unknown,
  columns: readonly RosterHeading[],
  reading: readonly HeadingReading[],
  rowCell: (index: number) => unknown,
  rules: RosterRules
): AnswerCell[] {
  const client = rosterClient(cell, rules);
  return columns.map((heading) => {
    try {
      return heading === UNREADABLE
        ? unreadableCells(client, reading, rowCell)
        : ROSTER_COLUMNS[heading](client);
    } catch (thrown) {
      return hostError(thrown);
    }
  });
}

const isClient = (row: ClientListRow): boolean => !row.isTotal && !row.isHeadings;

/** What applies to every client of a list: arguments as the host passed them. */
interface OfTheList {
  readonly taxYear: unknown;
  readonly asOf: unknown;
  readonly assumedRate: unknown;
}

/** The answers for the rows of a client list. */
interface RosterAnswers {
  /** The headings of the answers. */
  readonly headings: readonly string[];
  /** One row for each row of the list. */
  readonly rows: AnswerCell[][];
}

/**
 * The answers for the rows of a client list.
 *
 * @param name - The argument with the headings, for the error message.
 * @param list - The list.
 * @param wanted - The headings of the answers, and the headings of the user.
 * @param shared - What applies to every client.
 * @param rules - The rule tables.
 * @throws InputError for headings that cannot be read.
 */
export function rosterAnswers(
  name: string,
  list: ClientList,
  wanted: { readonly columns: readonly RosterHeading[]; readonly headings: OwnHeadings },
  shared: OfTheList,
  rules: RosterRules
): RosterAnswers {
  const { columns } = wanted;
  const year = yearOfList(shared.taxYear);
  const { reading, clients } = clientsOf(list, name, year, wanted.headings);
  const headings = columns.map((heading) =>
    heading === "Suggested payment"
      ? suggestedHeading(heading, clients.filter((row) => row !== undefined).filter(isClient))
      : heading
  );
  const rows = clients.map((row, index): AnswerCell[] => {
    if (row === undefined) return columns.map(() => BLANK);
    if (!isClient(row)) {
      const what = row.isTotal ? "a total, not a client" : "headings, not a client";
      return columns.map((heading) => (heading === UNREADABLE ? what : BLANK));
    }
    const rowCell = (at: number): unknown => list.rows[index]?.[at];
    return answersOf(cellOfClient(row, { ...shared }), columns, reading, rowCell, rules);
  });
  return { headings, rows };
}

/** The arguments of ROSTER and ROSTERROWS after the list. */
export const ofTheList = {
  taxYear: unread(taxYear),
  asOf: unread(date),
  assumedRate: unread(assumedRate),
  columns: answerColumns(ROSTER_HEADINGS, DEFAULT_HEADINGS),
  headings: ownHeadings,
} as const;

const ROSTER = tableFunction({
  arguments: {
    clientList,
    ...ofTheList,
  },
  tables: rosterTables,
  law: [
    "The law of DUE, EXTENDED, SHORTFALL, SUGGEST, CHARGES, METHOD, STAGE, NEXTDATE and ISSUES",
  ],
  examples: [
    {
      formula:
        '=EXT.ROSTER({"Client","Total tax","Payments";"Alder",20000,15000},2025,"4/10/2026")',
      answer: "5,000.00",
      remark: "balance due",
    },
    {
      formula:
        '=EXT.ROSTER({"Name","ST","Est. total tax","W/H","ES paid";"Cress","Maine","$12,400",6000,4000},2025,"4/10/2026",,{"Client","Balance due","Status"})',
      answer: "2,400.00",
      remark: "withholding and estimated tax payments are added",
    },
  ],
  note: "A blank row stays blank, and so does a row whose name begins with Total. 90% paid counts what is paid by the payment due date. If the list has a target or a cushion, the heading of the suggested payment says so. An answer that cannot be calculated shows its own error, and the column Unreadable names the cells of the row that cannot be read. ROSTERHEADINGS shows how each heading is read.",
  calculate: ({ clientList: list, columns, headings, ...shared }, rules) => {
    const answers = rosterAnswers("clientList", list, { columns, headings }, shared, rules);
    return [[...answers.headings], ...answers.rows];
  },
});

/**
 * Table with one row per client: due dates, balance due, suggested payment, penalties and interest, status, issues.
 *
 * @customfunction ROSTER
 * @param clientList Your list: a row of headings, then one row per client. It needs total tax and payments, or parts of the payments.
 * @param taxYear Tax year of the list, such as 2025. A tax year column in the list is used instead.
 * @param asOf As-of date. Anything that happened later is ignored.
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @param [columns] Headings of the answers you want, in their order; blank is the usual ones.
 * @param [headings] Two columns: a heading of your list, and the heading that it means or "not used".
 * @returns {any[][]} A row of headings, then one row per client. Fills several cells; not for use inside an Excel table.
 */
export function roster(
  clientList: unknown[][],
  taxYear: unknown,
  asOf: unknown,
  assumedRate?: unknown,
  columns?: unknown[][],
  headings?: unknown[][]
): unknown[][];
export function roster(...cells: unknown[]): unknown[][] {
  return ROSTER.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const rosterFunctions = { ROSTER };
