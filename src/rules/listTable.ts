import { calendarDate, type CalendarDate } from "../calendar/calendarDate";
import { notCovered } from "./notInTableError";
import { readSource, type Source, type WrittenSource } from "./source";

/** A row of a list with the law behind it. */
export type Sourced<Row> = Row & { readonly source: Source };

/** A row as its rules file writes it, without source and confidence. */
export type Unsourced<Written> = Omit<Written, keyof WrittenSource>;

/** Rules that are a list of cases, not figures by effective date. */
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
 * Reads a list table from its rules file. The tests check the file against its schema.
 *
 * @param written - The file's content.
 * @param name - What the file calls its rows.
 * @param read - Reads what JSON cannot express of a row: dates and decimal numbers.
 * @returns The table, each row with its source.
 * @throws RangeError if a date or a document of it does not exist: a fault in the rules.
 */
export function readListTable<
  Name extends string,
  Written extends WrittenList & Readonly<Record<Name, readonly WrittenSource[]>>,
  Row = Unsourced<Written[Name][number]>,
>(
  written: Written,
  name: Name,
  read: (row: Unsourced<Written[Name][number]>) => Row = (row) => row as Row
): ListTable<Row> {
  return {
    id: written.id,
    title: written.title,
    keyedBy: written.keyedBy,
    knownFrom: calendarDate(written.knownFrom),
    knownThrough: calendarDate(written.knownThrough),
    source: readSource(written),
    rows: written[name].map(({ source, confidence, ...row }) => ({
      ...read(row as Unsourced<Written[Name][number]>),
      source: readSource({ source, confidence }),
    })),
  };
}

/**
 * Refuses a date that a list does not cover.
 *
 * @throws NotInTableError before the first and after the last date that the list covers.
 */
export function requireReach<Row>(table: ListTable<Row>, date: CalendarDate): void {
  if (date < table.knownFrom || date > table.knownThrough) throw notCovered(table, date);
}
