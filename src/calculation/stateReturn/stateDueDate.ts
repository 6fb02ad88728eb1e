import { calendarDate, yearOf, type CalendarDate } from "../../calendar/calendarDate";
import { nextWorkday } from "../../calendar/nextWorkday";
import type { TaxYear } from "../taxYear";

/**
 * A state due date: the state's month and day in the year after the tax year, moved from a weekend to Monday.
 *
 * The move from a weekend is common practice, without a source for each state. Legal holidays differ between states and are not
 * used, so that they never make the date later than the state's own.
 *
 * @param taxYear - Calendar tax year.
 * @param monthAndDay - Month and day such as 04-15.
 * @returns The due date.
 *
 * @example
 * // 11-15 for tax year 2025 is a Sunday: 2026-11-16
 */
export function stateDueDate(taxYear: TaxYear, monthAndDay: string): CalendarDate {
  const named = calendarDate(`${String(yearOf(taxYear.lastDay) + 1)}-${monthAndDay}`);
  return nextWorkday(named, []).date;
}
