import { calendarDate, type CalendarDate } from "../calendar/calendarDate";
import { notCovered } from "./notInTableError";
import { readSource, type Source, type WrittenSource } from "./source";

/** A row of a list with the law behind it. */
export type Sourced<Row> = Row & { readonly source: Source };

/** Rules that are a list of cases rather than figures by effective day. */
export interface ListTable<Row> {
  readonly id: string;
  readonly title: string;
  readonly keyedBy: string;
  readonly knownFrom: CalendarDate;
  readonly knownThrough: CalendarDate;
  /** The law behind the list as a whole. */
  readonly source: Source;
  readonly rows: readonly Sourced<Row>[];
}

interface WrittenList extends WrittenSource {
  readonly id: string;
  readonly title: string;
  readonly keyedBy: string;
  readonly knownFrom: string;
  readonly knownThrough: string;
}

/**
 * Reads a list table from its rules file.
 *
 * @param written - The file's head.
 * @param rows - The file's rows as written.
 * @param readRow - Narrows one row, failing loudly on a word it does not know.
 * @returns The table, each row with its source.
 */
export function readListTable<Written extends WrittenSource, Row extends object>(
  written: WrittenList,
  rows: readonly Written[],
  readRow: (row: Written) => Row
): ListTable<Row> {
  return {
    id: written.id,
    title: written.title,
    keyedBy: written.keyedBy,
    knownFrom: calendarDate(written.knownFrom),
    knownThrough: calendarDate(written.knownThrough),
    source: readSource(written),
    rows: rows.map((row) => ({ ...readRow(row), source: readSource(row) })),
  };
}

/**
 * Refuses a day that a list does not reach.
 *
 * @throws NotInTableError before the list begins and after the day through which it is known.
 */
export function requireReach<Row>(table: ListTable<Row>, day: CalendarDate): void {
  if (day < table.knownFrom || day > table.knownThrough) {
    throw notCovered(table, day);
  }
}

/**
 * Narrows a word of a rules file to one of the words the program knows.
 *
 * @throws RangeError when it is none of them: a fault in the rules.
 */
export function oneOf<Word extends string>(words: readonly Word[], written: string): Word {
  const known = words.find((word) => word === written);
  if (known === undefined) throw new RangeError(`"${written}" is none of ${words.join(", ")}`);
  return known;
}
