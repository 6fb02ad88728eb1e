import { dayOfMonthOf, monthOf, yearOf, type CalendarDate } from "./calendarDate";

/** Names of the months, January first. */
export const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/**
 * A date as cells and error messages show it: month first, no leading zeros.
 *
 * @example
 * shortDate("2026-04-15") //=> "4/15/2026"
 */
export function shortDate(date: CalendarDate): string {
  return `${String(monthOf(date))}/${String(dayOfMonthOf(date))}/${String(yearOf(date))}`;
}

/**
 * A date as sentences and letters write it.
 *
 * @example
 * longDate("2026-04-15") //=> "April 15, 2026"
 */
export function longDate(date: CalendarDate): string {
  const month = MONTHS[monthOf(date) - 1] ?? "";
  return `${month} ${String(dayOfMonthOf(date))}, ${String(yearOf(date))}`;
}
