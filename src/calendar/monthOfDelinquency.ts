import { addMonths, daysBetween, lastDayOfMonth, type CalendarDate } from "./calendarDate";
import { remembered } from "./remembered";

/** Days: a count by the longest month never passes the months that have begun. */
const LONGEST_MONTH = 31;

const monthEndsAfter = remembered(
  (dueDate: CalendarDate) =>
    remembered(
      (count: number): CalendarDate => {
        const sameNumber = addMonths(dueDate, count);
        return dueDate === lastDayOfMonth(dueDate) ? lastDayOfMonth(sameNumber) : sameNumber;
      },
      (count) => count,
      1_000
    ),
  (dueDate) => dueDate,
  1_000
);

/**
 * Last day of the `count`-th month after a due date, as the regulation counts months of delinquency.
 *
 * If the due date is the last day of its month, each following month ends on its own last day. Otherwise each month ends on the
 * same day number, or on the last day of a February that lacks it. It does not matter whether the date found is a workday.
 *
 * @param dueDate - The date the act was due, before any move for weekends and holidays.
 * @param count - Months, zero or more; zero is the due date itself.
 * @returns The date on which that month ends; the next month begins one day later.
 * @see 26 CFR 301.6651-1(b)
 *
 * @example
 * monthEnd("2026-04-15", 1) //=> "2026-05-15"
 * monthEnd("2026-02-28", 1) //=> "2026-03-31"
 */
export function monthEnd(dueDate: CalendarDate, count: number): CalendarDate {
  return monthEndsAfter(dueDate)(count);
}

/**
 * Months or parts of months from a due date through a date. Part of a month counts as a month.
 *
 * @param dueDate - The date the act was due, before any move for weekends and holidays.
 * @param date - The date the act was done.
 * @returns Zero on or before the due date; one from the next day through the end of the first month, and so on.
 * @see 26 CFR 301.6651-1(b)(1)
 *
 * @example
 * monthsBegun("1990-04-15", "1990-08-16") //=> 5
 */
export function monthsBegun(dueDate: CalendarDate, date: CalendarDate): number {
  if (date <= dueDate) return 0;
  let months = Math.ceil(daysBetween(dueDate, date) / LONGEST_MONTH);
  while (monthEnd(dueDate, months) < date) months += 1;
  return months;
}
