import { UTCDate } from "@date-fns/utc";
import {
  addMonths as addMonthsToInstant,
  getDay,
  lastDayOfMonth as lastInstantDayOfMonth,
} from "date-fns";

/**
 * A day of the calendar, "YYYY-MM-DD": no time, no zone. Compares as text.
 *
 * Only this folder turns one into an instant, always at midnight UTC, so that no answer depends on where the workbook is open.
 */
export type CalendarDate = string & { readonly calendarDate: unique symbol };

const WRITTEN = /^(\d{4})-(\d{2})-(\d{2})$/;
const MILLISECONDS_A_DAY = 86_400_000;

const written = (instant: Date): CalendarDate => instant.toISOString().slice(0, 10) as CalendarDate;
const midnight = (day: CalendarDate): UTCDate => new UTCDate(Date.parse(day));

/**
 * Reads a day written "YYYY-MM-DD".
 *
 * @param text - Year, month and day with hyphens.
 * @returns The day, or `undefined` when the text is not written so or names a day that does not exist (2026-02-30).
 */
export function parseCalendarDate(text: string): CalendarDate | undefined {
  if (!WRITTEN.test(text)) return undefined;
  const instant = Date.parse(text);
  if (Number.isNaN(instant)) return undefined;
  const day = written(new UTCDate(instant));
  return day === text ? day : undefined;
}

/**
 * Reads a day that the program itself wrote down; a wrong one is a bug.
 *
 * @param text - Year, month and day with hyphens.
 * @returns The day.
 * @throws RangeError when there is no such day.
 */
export function calendarDate(text: string): CalendarDate {
  const day = parseCalendarDate(text);
  if (day === undefined) throw new RangeError(`"${text}" is not a day written YYYY-MM-DD`);
  return day;
}

/** The calendar year a day lies in. */
export function yearOf(day: CalendarDate): number {
  return Number(day.slice(0, 4));
}

/** The month a day lies in, 1 to 12. */
export function monthOf(day: CalendarDate): number {
  return Number(day.slice(5, 7));
}

/** Day of the week, 0 = Sunday to 6 = Saturday. */
export function weekdayOf(day: CalendarDate): number {
  return getDay(midnight(day));
}

/** The day `days` later; earlier when negative. */
export function addDays(day: CalendarDate, days: number): CalendarDate {
  return written(new UTCDate(Date.parse(day) + days * MILLISECONDS_A_DAY));
}

/** Days from `from` to `to` as a plain difference: April 15 to April 16 is one. */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return (Date.parse(to) - Date.parse(from)) / MILLISECONDS_A_DAY;
}

/**
 * The same day number `months` later, or the last day of a month that is too short.
 *
 * Count from the anchor day each time: January 31 plus one month, plus one month, is not January 31 plus two.
 */
export function addMonths(day: CalendarDate, months: number): CalendarDate {
  return written(addMonthsToInstant(midnight(day), months));
}

/** Orders days for sorting, earliest first. */
export function compareDates(one: CalendarDate, other: CalendarDate): number {
  return one < other ? -1 : one > other ? 1 : 0;
}

/** The earlier of two days. */
export function earlierDate(one: CalendarDate, other: CalendarDate): CalendarDate {
  return one < other ? one : other;
}

/** The later of two days. */
export function laterDate(one: CalendarDate, other: CalendarDate): CalendarDate {
  return one > other ? one : other;
}

/** The last day of the month a day lies in. */
export function lastDayOfMonth(day: CalendarDate): CalendarDate {
  return written(lastInstantDayOfMonth(midnight(day)));
}

/** Days in a calendar year: the divisor of a daily rate (26 CFR 301.6622-1(a)). */
export function daysInYear(year: number): 365 | 366 {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 366 : 365;
}
