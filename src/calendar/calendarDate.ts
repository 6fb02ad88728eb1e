import { UTCDateMini } from "@date-fns/utc/date/mini";
import { addMonths as addMonthsToInstant, lastDayOfMonth as lastInstantDayOfMonth } from "date-fns";
import { remembered } from "./remembered";

/**
 * A calendar date, without time or time zone: days from 1899-12-30. From 61 on, March 1, 1900, it equals the worksheet's own serial.
 *
 * Two dates compare and subtract as numbers. A text never shows the number: `written`, `shortDate` and `longDate` write the date.
 * Only this folder converts one to an instant, always midnight UTC, so that no answer depends on where the workbook is open.
 */
export type CalendarDate = number & { readonly calendarDate: unique symbol };

const WRITTEN = /^\d{4}-\d{2}-\d{2}$/;
const MILLISECONDS_A_DAY = 86_400_000;
const DATE_ZERO = Date.UTC(1899, 11, 30);
/** More than any count of months, so that a date and a count make one number. */
const MORE_THAN_MONTHS = 2 ** 16;
const MOST_REMEMBERED = 5_000;
/** The weekday of date zero, a Saturday, and the days of a week. */
const WEEKDAY_ZERO = 6;
const DAYS_A_WEEK = 7;

const millisecondsOf = (date: CalendarDate): number => DATE_ZERO + date * MILLISECONDS_A_DAY;
const midnight = (date: CalendarDate): Date => new Date(millisecondsOf(date));
/** Midnight for the library, whose functions otherwise take the time zone of the computer. */
const libraryMidnight = (date: CalendarDate): Date => new UTCDateMini(millisecondsOf(date));
const dateAt = (milliseconds: number): CalendarDate =>
  ((milliseconds - DATE_ZERO) / MILLISECONDS_A_DAY) as CalendarDate;

/**
 * Writes a date as rules, tests and code write it.
 *
 * @param date - The date.
 * @returns Year, month and day with hyphens: "2026-04-15".
 */
export function written(date: CalendarDate): string {
  return midnight(date).toISOString().slice(0, 10);
}

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
  const date = dateAt(instant);
  return written(date) === text ? date : undefined;
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
  return midnight(date).getUTCFullYear();
}

/** The month of a date, 1 to 12. */
export function monthOf(date: CalendarDate): number {
  return midnight(date).getUTCMonth() + 1;
}

/** The day of the month of a date, 1 to 31. */
export function dayOfMonthOf(date: CalendarDate): number {
  return midnight(date).getUTCDate();
}

/** Day of the week, 0 = Sunday to 6 = Saturday. */
export function weekdayOf(date: CalendarDate): number {
  const weekday = (date + WEEKDAY_ZERO) % DAYS_A_WEEK;
  return weekday < 0 ? weekday + DAYS_A_WEEK : weekday;
}

/** The date `days` later; earlier if negative. */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  return (date + days) as CalendarDate;
}

/** Days from `from` to `to` as a difference: April 15 to April 16 is one. */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return to - from;
}

/**
 * The same day number `months` later, or the last day of a month that is too short.
 *
 * Always count from the first date: January 31 plus one month, plus one month, is not January 31 plus two months.
 */
export const addMonths = remembered(
  (date: CalendarDate, months: number): CalendarDate =>
    dateAt(addMonthsToInstant(libraryMidnight(date), months).getTime()),
  (date, months) => date * MORE_THAN_MONTHS + months,
  MOST_REMEMBERED
);

/** Sorts dates, earliest first. */
export function compareDates(one: CalendarDate, other: CalendarDate): number {
  return one - other;
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
  return dateAt(lastInstantDayOfMonth(libraryMidnight(date)).getTime());
}

/** Days in a calendar year, the divisor of a daily interest rate (26 CFR 301.6622-1(a)). */
export function daysInYear(year: number): 365 | 366 {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 366 : 365;
}
