import { addDays, weekdayOf, type CalendarDate } from "./calendarDate";
import { legalHolidayOn, type HolidayRule } from "./legalHoliday";

/** A date that is not a workday, and why: Saturday, Sunday or the name of a legal holiday. */
export interface SkippedDate {
  readonly date: CalendarDate;
  readonly because: string;
}

/** The first workday on or after a date, and the dates skipped before it. */
export interface Workday {
  readonly date: CalendarDate;
  readonly skipped: readonly SkippedDate[];
}

/**
 * The first date, from the given one on, that is not a Saturday, Sunday or legal holiday.
 *
 * @param date - The last day the law gives for the act, including any extension.
 * @param holidays - rules/legal-holidays.json.
 * @param state - Postal code of the state whose holidays count in addition to those of the District of Columbia, if any.
 * @returns The workday and the reasons for the move.
 * @see 26 U.S.C. 7503
 *
 * @example
 * nextWorkday("2017-04-15", holidays).date //=> "2017-04-18"
 */
export function nextWorkday(
  date: CalendarDate,
  holidays: readonly HolidayRule[],
  state?: string
): Workday {
  const skipped: SkippedDate[] = [];
  let candidate = date;
  for (;;) {
    const weekday = weekdayOf(candidate);
    const holiday = legalHolidayOn(candidate, holidays, state);
    if (weekday === 6) skipped.push({ date: candidate, because: "Saturday" });
    else if (weekday === 0) skipped.push({ date: candidate, because: "Sunday" });
    else if (holiday !== undefined) skipped.push({ date: candidate, because: holiday });
    else return { date: candidate, skipped };
    candidate = addDays(candidate, 1);
  }
}
