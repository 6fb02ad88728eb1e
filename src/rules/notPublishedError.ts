import type { CalendarDate } from "../calendar/calendarDate";

/** A figure was asked for on a day for which none is published, or none is held: becomes `#N/A` with this sentence. */
export class NotPublishedError extends Error {
  override readonly name = "NotPublishedError";

  /**
   * @param table - Title of the table.
   * @param file - Its name under rules/.
   * @param day - The day asked for, in the table's own sense.
   * @param held - The days for which the table holds figures.
   * @param held.from - The first.
   * @param held.through - The last.
   */
  constructor(
    table: string,
    file: string,
    day: CalendarDate,
    held: { readonly from: CalendarDate; readonly through: CalendarDate }
  ) {
    const reach =
      day < held.from ? `held only from ${held.from} on` : `known only through ${held.through}`;
    super(`${table}: no figure for ${day}; ${reach} (rules/${file}.json)`);
  }
}
