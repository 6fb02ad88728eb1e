import { calendarDate, lastDayOfMonth, type CalendarDate } from "../calendar/calendarDate";

/** A tax year, known by its last day: December 31 of a calendar year, another month's end of a fiscal year. */
export interface TaxYear {
  readonly lastDay: CalendarDate;
}

/** The calendar tax year of a year's number. */
export function calendarTaxYear(year: number): TaxYear {
  return { lastDay: calendarDate(`${String(year).padStart(4, "0")}-12-31`) };
}

/**
 * The fiscal tax year that ends on a day.
 *
 * @returns The year, or `undefined` when the day is not the last of its month (section 441(e) knows no other fiscal year).
 */
export function fiscalTaxYear(lastDay: CalendarDate): TaxYear | undefined {
  return lastDayOfMonth(lastDay) === lastDay ? { lastDay } : undefined;
}
