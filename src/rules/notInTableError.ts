import type { CalendarDate } from "../calendar/calendarDate";
import { shortDate } from "../calendar/writtenDate";

/** The table that was asked. */
interface AskedTable {
  /** Its file under rules/, without the ending. */
  readonly id: string;
  readonly title: string;
  readonly knownFrom: CalendarDate;
  readonly knownThrough: CalendarDate;
}

/** A rule table has no figure, or none that may be relied on: the worksheet shows `#N/A` with this sentence. */
export class NotInTableError extends Error {
  override readonly name = "NotInTableError";

  /**
   * @param table - The table.
   * @param sentences - What is missing and what to do next, in full sentences.
   */
  constructor(table: Pick<AskedTable, "title">, sentences: string) {
    super(`${table.title}: ${sentences}`);
  }
}

/**
 * The error for a date outside the dates that a table covers.
 *
 * @param table - The table.
 * @param date - The date asked for, in the sense of the table's `keyedBy`.
 * @returns The error, to be thrown.
 */
export function notCovered(table: AskedTable, date: CalendarDate): NotInTableError {
  const { id, knownFrom, knownThrough } = table;
  const reach =
    date < knownFrom
      ? `The table begins on ${shortDate(knownFrom)} (rules/${id}.json). Use the official text of that time.`
      : `The table covers dates through ${shortDate(knownThrough)} (rules/${id}.json). Check for a newer version of the add-in.`;
  return new NotInTableError(table, `There is no figure for ${shortDate(date)}. ${reach}`);
}
