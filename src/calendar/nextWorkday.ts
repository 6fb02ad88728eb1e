import { addDays, weekdayOf, type CalendarDate } from "./calendarDate";
import { legalHolidayOn, type HolidayRule } from "./legalHoliday";

/** A day on which nothing need be done, and why: Saturday, Sunday or the name of a legal holiday. */
export interface SkippedDay {
  readonly day: CalendarDate;
  readonly because: string;
}

/** The first workday at or after a day, with the days passed over on the way. */
export interface Workday {
  readonly day: CalendarDate;
  readonly skipped: readonly SkippedDay[];
}

/**
 * The next day that is not a Saturday, Sunday or legal holiday; the day itself when it is none.
 *
 * @param day - The last day the law gives for the act, any extension included.
 * @param holidays - rules/legal-holidays.json.
 * @param state - Postal code of the state whose holidays count beside those of the District of Columbia, if any.
 * @returns The workday and why it moved.
 * @see 26 U.S.C. 7503
 *
 * @example
 * nextWorkday("2017-04-15", holidays).day //=> "2017-04-18"
 */
export function nextWorkday(
  day: CalendarDate,
  holidays: readonly HolidayRule[],
  state?: string
): Workday {
  const skipped: SkippedDay[] = [];
  let candidate = day;
  for (;;) {
    const weekday = weekdayOf(candidate);
    const holiday = legalHolidayOn(candidate, holidays, state);
    if (weekday === 6) skipped.push({ day: candidate, because: "Saturday" });
    else if (weekday === 0) skipped.push({ day: candidate, because: "Sunday" });
    else if (holiday !== undefined) skipped.push({ day: candidate, because: holiday });
    else return { day: candidate, skipped };
    candidate = addDays(candidate, 1);
  }
}
