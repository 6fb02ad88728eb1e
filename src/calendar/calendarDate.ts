import { UTCDateMini } from "@date-fns/utc/date/mini";
import {
  addMonths as addMonthsToInstant,
  getDay,
  lastDayOfMonth as lastInstantDayOfMonth,
} from "date-fns";

/**
 * A calendar date written "YYYY-MM-DD", without time or time zone. Two dates compare as text.
 *
 * Only this folder converts one to an instant, always midnight UTC, so that no answer depends on where the workbook is open.
 */
export type CalendarDate = string & { readonly calendarDate: unique symbol };

const WRITTEN = /^(\d{4})-(\d{2})-(\d{2})$/;
const MILLISECONDS_A_DAY = 86_400_000;

const written = (instant: Date): CalendarDate => instant.toISOString().slice(0, 10) as CalendarDate;
const midnight = (date: CalendarDate): UTCDateMini => new UTCDateMini(Date.parse(date));

/**
 * Reads a date written "YYYY-MM-DD".
 *
 * @param text - Year, month and day with hyphens.
 * @returns The date, or `undefined` if the text is not written like this or the date does not exist (2026-02-30).
 */
export function parseCalendarDate(text: string): CalendarDate | undefined {
  if (!WRITTEN.test(text)) return undefined;
  const instant = Date.parse(text);
  if (Number.isNaN(instant)) return undefined;
  const date = written(new UTCDateMini(instant));
  return date === text ? date : undefined;
}

/**
 * Reads a date written by the program or its rules; a wrong one is a bug.
 *
 * @param text - Year, month and day with hyphens.
 * @returns The date.
 * @throws RangeError if there is no such date.
 */
export function calendarDate(text: string): CalendarDate {
  const date = parseCalendarDate(text);
  if (date === undefined) throw new RangeError(`"${text}" is not a date written YYYY-MM-DD`);
  return date;
}

/** The calendar year of a date. */
export function yearOf(date: CalendarDate): number {
  return Number(date.slice(0, 4));
}

/** The month of a date, 1 to 12. */
export function monthOf(date: CalendarDate): number {
  return Number(date.slice(5, 7));
}

/** Day of the week, 0 = Sunday to 6 = Saturday. */
export function weekdayOf(date: CalendarDate): number {
  return getDay(midnight(date));
}

/** The date `days` later; earlier if negative. */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  return written(new UTCDateMini(Date.parse(date) + days * MILLISECONDS_A_DAY));
}

/** Days from `from` to `to` as a difference: April 15 to April 16 is one. */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return (Date.parse(to) - Date.parse(from)) / MILLISECONDS_A_DAY;
}

/**
 * The same day number `months` later, or the last day of a month that is too short.
 *
 * Always count from the first date: January 31 plus one month, plus one month, is not January 31 plus two months.
 */
export function addMonths(date: CalendarDate, months: number): CalendarDate {
  return written(addMonthsToInstant(midnight(date), months));
}

/** Sorts dates, earliest first. */
export function compareDates(one: CalendarDate, other: CalendarDate): number {
  return one < other ? -1 : one > other ? 1 : 0;
}

/** The earlier of two dates. */
export function earlierDate(one: CalendarDate, other: CalendarDate): CalendarDate {
  return one < other ? one : other;
}

/** The later of two dates. */
export function laterDate(one: CalendarDate, other: CalendarDate): CalendarDate {
  return one > other ? one : other;
}

/** The last day of the month of a date. */
export function lastDayOfMonth(date: CalendarDate): CalendarDate {
  return written(lastInstantDayOfMonth(midnight(date)));
}

/** Days in a calendar year, the divisor of a daily interest rate (26 CFR 301.6622-1(a)). */
export function daysInYear(year: number): 365 | 366 {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 366 : 365;
}
