import { yearOf } from "../../calendar/calendarDate";
import { readArgument } from "../arguments/argumentKind";
import { clientsOf, type ClientList, type ClientListRow } from "../arguments/clientList";
import type { OwnHeadings } from "../arguments/ownHeadings";
import type { HeadingReading } from "../arguments/readHeadings";
import { taxYear } from "../arguments/taxYear";
import { BLANK, type AnswerCell } from "../cells/answerCell";
import { cellValue, isBlankOrZero } from "../cells/cellValue";
import { hostError } from "../cells/hostError";
import { InputError } from "../cells/inputError";
import { cellOfClient } from "./cellOfClient";
import { rosterClient, type RosterRules } from "./rosterClient";
import { ROSTER_COLUMNS, UNREADABLE, type RosterHeading } from "./rosterColumns";
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
interface RosterTable {
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
export function rosterTable(
  name: string,
  list: ClientList,
  wanted: { readonly columns: readonly RosterHeading[]; readonly headings: OwnHeadings },
  shared: OfTheList,
  rules: RosterRules
): RosterTable {
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
