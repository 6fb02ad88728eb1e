import type { CalendarDate } from "./calendarDate";

/** The 1900 date system is correct from serial 61 on. Serial 60 is February 29, 1900, which did not exist. */
const FIRST_TRUE_SERIAL = 61;
const LAST_SERIAL = 2_958_465;

/**
 * Reads a worksheet date. A date is its own serial, so it needs no function to write it.
 *
 * @param serial - Days in the 1900 date system; a time of day (the fraction) is ignored.
 * @returns The date, or `undefined` for serial 60 and below, where the 1900 system differs from the calendar, and beyond the year 9999.
 *
 * @example
 * dateFromSerial(46127.75) //=> 2026-04-15
 */
export function dateFromSerial(serial: number): CalendarDate | undefined {
  const days = Math.floor(serial);
  return days >= FIRST_TRUE_SERIAL && days <= LAST_SERIAL ? (days as CalendarDate) : undefined;
}
