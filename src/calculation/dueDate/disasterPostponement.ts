import type { CalendarDate } from "../../calendar/calendarDate";

/** A disaster-relief period announced for the area of the client's address of record. */
export interface DisasterPostponement {
  /** First day whose acts are postponed. */
  readonly begins: CalendarDate;
  /** The day to which they are postponed. */
  readonly postponementEnds: CalendarDate;
}

/**
 * A last day as disaster relief moves it.
 *
 * An act whose last day falls inside the period may be done on its last day; one whose day had passed when it began, or that is
 * due after it, stays. The announced day is taken as announced, weekend or not.
 *
 * @param lastDay - The last day for the act, weekends and holidays counted.
 * @param postponement - The period as announced.
 * @returns The last day, moved or not.
 * @see 26 U.S.C. 7508A(a)
 *
 * @example
 * postponedByRelief("2026-04-15", { begins: "2026-01-22", postponedTo: "2026-06-08" }) //=> "2026-06-08"
 */
export function postponedDate(
  lastDay: CalendarDate,
  postponement: DisasterPostponement
): CalendarDate {
  return lastDay >= postponement.begins && lastDay <= postponement.postponementEnds
    ? postponement.postponementEnds
    : lastDay;
}
