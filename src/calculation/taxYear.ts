import {
  addDays,
  addMonths,
  calendarDate,
  daysBetween,
  lastDayOfMonth,
  yearOf,
  type CalendarDate,
} from "../calendar/calendarDate";
import { remembered } from "../calendar/remembered";

/**
 * A tax year. A calendar year ends on December 31, a fiscal year on the last day of another month. A 52/53-week year is treated as
 * beginning with the first day of the month that begins nearest to it, and as ending with the last day of the month that ends nearest.
 */
export interface TaxYear {
  /** Rates and amounts for the year are those of the calendar year in which it begins. */
  readonly firstDay: CalendarDate;
  readonly lastDay: CalendarDate;
  /** Of a 52/53-week year, the date on which it really ends, if that is not the last day of a month. */
  readonly closesOn?: CalendarDate;
}

const MONTHS_OF_A_YEAR = 12;
const MOST_REMEMBERED = 500;
/** A year that ends on the last such weekday of a month ends up to six days before the month does (section 441(f)(1)(A)). */
const MOST_DAYS_BEFORE_MONTH_ENDS = 6;
/** A year that ends on such a weekday nearest to the end of a month ends up to three days after it (section 441(f)(1)(B)). */
const MOST_DAYS_AFTER_MONTH_ENDS = 3;

function lastDayOfYearBefore(lastDay: CalendarDate): CalendarDate {
  return lastDayOfMonth(addMonths(lastDay, -MONTHS_OF_A_YEAR));
}

/** The calendar tax year with a number, such as 2025. */
export const calendarTaxYear = remembered(
  (year: number): TaxYear => {
    const digits = String(year).padStart(4, "0");
    return { firstDay: calendarDate(`${digits}-01-01`), lastDay: calendarDate(`${digits}-12-31`) };
  },
  (year) => year,
  MOST_REMEMBERED
);

/** The last day of the month that a 52/53-week year ending on a date is treated as ending with; `undefined` if no year ends on the date. */
function nearestMonthEnd(date: CalendarDate): CalendarDate | undefined {
  const inMonth = lastDayOfMonth(date);
  if (daysBetween(date, inMonth) <= MOST_DAYS_BEFORE_MONTH_ENDS) return inMonth;
  const before = lastDayOfMonth(addMonths(date, -1));
  return daysBetween(before, date) <= MOST_DAYS_AFTER_MONTH_ENDS ? before : undefined;
}

/**
 * The fiscal tax year that ends on a date.
 *
 * @param date - The last day of a month, or the day on which a 52/53-week year ends.
 * @returns The year, or `undefined` if the date is more than six days before and more than three days after the end of a month.
 * @see 26 U.S.C. 441(e), (f)(1), (2)(A)
 *
 * @example
 * fiscalTaxYear("2025-12-27") //=> { firstDay: "2025-01-01", lastDay: "2025-12-31", closesOn: "2025-12-27" }
 */
export function fiscalTaxYear(date: CalendarDate): TaxYear | undefined {
  const lastDay = nearestMonthEnd(date);
  if (lastDay === undefined) return undefined;
  const firstDay = addDays(lastDayOfYearBefore(lastDay), 1);
  return lastDay === date ? { firstDay, lastDay } : { firstDay, lastDay, closesOn: date };
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

/** The tax year after, of a 52/53-week year as it is treated: where the law counts months, the month end decides. */
export const yearAfter = remembered(
  ({ lastDay }: TaxYear): TaxYear => ({
    firstDay: addDays(lastDay, 1),
    lastDay: lastDayOfMonth(addMonths(lastDay, MONTHS_OF_A_YEAR)),
  }),
  ({ lastDay }) => lastDay,
  MOST_REMEMBERED
);

/** Whether the last date of another tax year is in a tax year: the same year, or one of a client who changed the tax year. */
export function includesYear({ firstDay, lastDay }: TaxYear, other: TaxYear): boolean {
  return firstDay <= other.lastDay && other.lastDay <= lastDay;
}

/** Whether a tax year is a fiscal year. A 52/53-week year is one even if it ends near December 31 (section 441(e)). */
export function isFiscalYear({ lastDay, closesOn }: TaxYear): boolean {
  return closesOn !== undefined || yearOf(addDays(lastDay, 1)) === yearOf(lastDay);
}
