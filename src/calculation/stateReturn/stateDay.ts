import { calendarDate, yearOf, type CalendarDate } from "../../calendar/calendarDate";
import { nextWorkday } from "../../calendar/nextWorkday";
import type { TaxYear } from "../taxYear";

/**
 * A state's month and day in the year after the tax year, moved off a weekend.
 *
 * Common practice, no source for each state: a Saturday or Sunday goes to Monday. Legal holidays differ from state to state and
 * are left out, so that the answer is never later than the state's own day on their account.
 *
 * @param taxYear - Calendar tax year.
 * @param monthAndDay - Such as 04-15.
 * @returns The day.
 *
 * @example
 * // tax year 2026, 11-15 falls on a Monday; 2025's on a Sunday: 2026-11-16
 */
export function stateDay(taxYear: TaxYear, monthAndDay: string): CalendarDate {
  const named = calendarDate(`${String(yearOf(taxYear.lastDay) + 1)}-${monthAndDay}`);
  return nextWorkday(named, []).day;
}
