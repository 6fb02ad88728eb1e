import { addDays, calendarDate, daysBetween, type CalendarDate } from "./calendarDate";

/** Day zero of the 1900 date system as it stands from serial 61 on; 60 is a February 29, 1900 that never was. */
const DAY_ZERO = calendarDate("1899-12-30");
const FIRST_TRUE_SERIAL = 61;
const LAST_SERIAL = 2_958_465;

/**
 * Reads a worksheet date.
 *
 * @param serial - Days in the 1900 date system; a time of day (the fraction) is dropped.
 * @returns The day, or `undefined` at serial 60 and below, where the 1900 system disagrees with the calendar, and beyond the year 9999.
 *
 * @example
 * fromSerialDay(46127.75) //=> "2026-04-15"
 */
export function fromSerialDay(serial: number): CalendarDate | undefined {
  const days = Math.floor(serial);
  return days >= FIRST_TRUE_SERIAL && days <= LAST_SERIAL ? addDays(DAY_ZERO, days) : undefined;
}

/**
 * Writes a day as a worksheet date.
 *
 * @param day - March 1, 1900 or later.
 * @returns Its serial in the 1900 date system.
 */
export function toSerialDay(day: CalendarDate): number {
  return daysBetween(DAY_ZERO, day);
}
