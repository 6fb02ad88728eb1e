import { addMonths, lastDayOfMonth, monthOf, yearOf, type CalendarDate } from "./calendarDate";

/** Month ends already worked out, by due date: a client list counts from the same few due dates over and over. */
const worked = new Map<CalendarDate, Map<number, CalendarDate>>();
const MOST_KEPT = 1_000;

/**
 * Last day of the `count`-th month after a due date, as the regulation counts months of delinquency.
 *
 * A due date that is the last day of its month runs to the last days of the following months; any other runs to the same
 * day number, or to the last day of a February that lacks it. It does not matter whether the day found is a workday.
 *
 * @param dueDate - The day the act was due, before any move for weekends and holidays.
 * @param count - Months, zero or more; zero is the due date itself.
 * @returns The day on which that month ends; the next month begins the day after.
 * @see 26 CFR 301.6651-1(b)
 *
 * @example
 * monthEnd("2026-04-15", 1) //=> "2026-05-15"
 * monthEnd("2026-02-28", 1) //=> "2026-03-31"
 */
export function monthEnd(dueDate: CalendarDate, count: number): CalendarDate {
  const ends = worked.get(dueDate) ?? new Map<number, CalendarDate>();
  const known = ends.get(count);
  if (known) return known;
  const sameNumber = addMonths(dueDate, count);
  const end = dueDate === lastDayOfMonth(dueDate) ? lastDayOfMonth(sameNumber) : sameNumber;
  if (worked.size >= MOST_KEPT) worked.clear();
  worked.set(dueDate, ends.set(count, end));
  return end;
}

/**
 * Months or parts of months from a due date through a day. A part counts whole.
 *
 * @param dueDate - The day the act was due, before any move for weekends and holidays.
 * @param day - The day the act was done.
 * @returns Zero on or before the due date; one from the day after through the end of the first month, and so on.
 * @see 26 CFR 301.6651-1(b)(1)
 *
 * @example
 * monthsBegun("1990-04-15", "1990-08-16") //=> 5
 */
export function monthsBegun(dueDate: CalendarDate, day: CalendarDate): number {
  if (day <= dueDate) return 0;
  const months = (yearOf(day) - yearOf(dueDate)) * 12 + monthOf(day) - monthOf(dueDate);
  return day <= monthEnd(dueDate, months) ? months : months + 1;
}
