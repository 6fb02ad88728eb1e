import {
  addDays,
  addMonths,
  calendarDate,
  lastDayOfMonth,
  type CalendarDate,
} from "../calendar/calendarDate";

/** A tax year: December 31 is the last day of a calendar year, another month's end that of a fiscal year. */
export interface TaxYear {
  /** Rates and amounts of a year are those of the calendar year in which it begins. */
  readonly firstDay: CalendarDate;
  readonly lastDay: CalendarDate;
}

const MONTHS_OF_A_YEAR = 12;

function dayBefore(lastDay: CalendarDate): CalendarDate {
  return lastDayOfMonth(addMonths(lastDay, -MONTHS_OF_A_YEAR));
}

/** The calendar tax year of a year's number. */
export function calendarTaxYear(year: number): TaxYear {
  const digits = String(year).padStart(4, "0");
  return { firstDay: calendarDate(`${digits}-01-01`), lastDay: calendarDate(`${digits}-12-31`) };
}

/**
 * The fiscal tax year that ends on a day.
 *
 * @returns The year, or `undefined` when the day is not the last of its month (section 441(e) knows no other fiscal year).
 */
export function fiscalTaxYear(lastDay: CalendarDate): TaxYear | undefined {
  if (lastDayOfMonth(lastDay) !== lastDay) return undefined;
  return { firstDay: addDays(dayBefore(lastDay), 1), lastDay };
}

/** The tax year before. */
export function yearBefore({ firstDay }: TaxYear): TaxYear {
  const lastDay = addDays(firstDay, -1);
  return { firstDay: addDays(dayBefore(lastDay), 1), lastDay };
}

/** The tax year after. */
export function yearAfter({ lastDay }: TaxYear): TaxYear {
  const nextLastDay = lastDayOfMonth(addMonths(lastDay, MONTHS_OF_A_YEAR));
  return { firstDay: addDays(lastDay, 1), lastDay: nextLastDay };
}

/** Whether a tax year is a fiscal one. */
export function isFiscalYear({ lastDay }: TaxYear): boolean {
  return !lastDay.endsWith("-12-31");
}
