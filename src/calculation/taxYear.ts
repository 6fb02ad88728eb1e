import {
  addDays,
  addMonths,
  calendarDate,
  lastDayOfMonth,
  type CalendarDate,
} from "../calendar/calendarDate";

/** A tax year. A calendar year ends on December 31, a fiscal year on the last day of another month. */
export interface TaxYear {
  /** Rates and amounts for the year are those of the calendar year in which it begins. */
  readonly firstDay: CalendarDate;
  readonly lastDay: CalendarDate;
}

const MONTHS_OF_A_YEAR = 12;

function lastDayOfYearBefore(lastDay: CalendarDate): CalendarDate {
  return lastDayOfMonth(addMonths(lastDay, -MONTHS_OF_A_YEAR));
}

/** The calendar tax year with a number, such as 2025. */
export function calendarTaxYear(year: number): TaxYear {
  const digits = String(year).padStart(4, "0");
  return { firstDay: calendarDate(`${digits}-01-01`), lastDay: calendarDate(`${digits}-12-31`) };
}

/**
 * The fiscal tax year that ends on a date.
 *
 * @returns The year, or `undefined` if the date is not the last of its month, as section 441(e) requires.
 */
export function fiscalTaxYear(lastDay: CalendarDate): TaxYear | undefined {
  if (lastDayOfMonth(lastDay) !== lastDay) return undefined;
  return { firstDay: addDays(lastDayOfYearBefore(lastDay), 1), lastDay };
}

/** The tax years before a year, the earliest first. */
export function yearsBefore({ firstDay }: TaxYear, many: number): readonly TaxYear[] {
  const years: TaxYear[] = [];
  for (let start = firstDay; years.length < many; start = years[0]?.firstDay ?? firstDay) {
    const lastDay = addDays(start, -1);
    years.unshift({ firstDay: addDays(lastDayOfYearBefore(lastDay), 1), lastDay });
  }
  return years;
}

/** The tax year after. */
export function yearAfter({ lastDay }: TaxYear): TaxYear {
  const nextLastDay = lastDayOfMonth(addMonths(lastDay, MONTHS_OF_A_YEAR));
  return { firstDay: addDays(lastDay, 1), lastDay: nextLastDay };
}

/** Whether the last date of another tax year is in a tax year: the same year, or one of a client who changed the tax year. */
export function includesYear({ firstDay, lastDay }: TaxYear, other: TaxYear): boolean {
  return firstDay <= other.lastDay && other.lastDay <= lastDay;
}

/** Whether a tax year is a fiscal year. */
export function isFiscalYear({ lastDay }: TaxYear): boolean {
  return !lastDay.endsWith("-12-31");
}
