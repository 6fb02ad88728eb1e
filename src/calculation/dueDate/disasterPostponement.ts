import type { CalendarDate } from "../../calendar/calendarDate";

/** A postponement period announced for the disaster area of the client's address of record. */
export interface DisasterPostponement {
  /** First date of the period. */
  readonly begins: CalendarDate;
  /** The date to which a deadline in the period is postponed. */
  readonly ends: CalendarDate;
}

/**
 * A deadline after a disaster postponement.
 *
 * A deadline within the period moves to the end of the period. A deadline before or after it does not move. The end is used
 * as announced, even if it is on a weekend.
 *
 * @param lastDay - The deadline, already moved for weekends and holidays.
 * @param postponement - The period as announced.
 * @returns The deadline, moved or not.
 * @see 26 U.S.C. 7508A(a)
 *
 * @example
 * postponedDate("2026-04-15", { begins: "2026-01-22", ends: "2026-06-08" }) //=> "2026-06-08"
 */
export function postponedDate(
  lastDay: CalendarDate,
  postponement: DisasterPostponement
): CalendarDate {
  return lastDay >= postponement.begins && lastDay <= postponement.ends
    ? postponement.ends
    : lastDay;
}
