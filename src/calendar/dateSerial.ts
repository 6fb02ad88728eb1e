import { addDays, calendarDate, daysBetween, type CalendarDate } from "./calendarDate";

/** Date zero of the 1900 date system, correct from serial 61 on. Serial 60 is February 29, 1900, which did not exist. */
const DATE_ZERO = calendarDate("1899-12-30");
const FIRST_TRUE_SERIAL = 61;
const LAST_SERIAL = 2_958_465;

/**
 * Reads a worksheet date.
 *
 * @param serial - Days in the 1900 date system; a time of day (the fraction) is ignored.
 * @returns The date, or `undefined` for serial 60 and below, where the 1900 system differs from the calendar, and beyond the year 9999.
 *
 * @example
 * dateFromSerial(46127.75) //=> "2026-04-15"
 */
export function dateFromSerial(serial: number): CalendarDate | undefined {
  const days = Math.floor(serial);
  return days >= FIRST_TRUE_SERIAL && days <= LAST_SERIAL ? addDays(DATE_ZERO, days) : undefined;
}

/**
 * Writes a date as a worksheet date.
 *
 * @param date - March 1, 1900 or later.
 * @returns Its serial in the 1900 date system.
 */
export function serialFromDate(date: CalendarDate): number {
  return daysBetween(DATE_ZERO, date);
}
