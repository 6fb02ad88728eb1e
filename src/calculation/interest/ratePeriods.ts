import {
  addDays,
  calendarDate,
  daysBetween,
  daysInYear,
  yearOf,
  type CalendarDate,
} from "../../calendar/calendarDate";
import { underpaymentRate, type InterestRates, type UnderpaymentRate } from "./underpaymentRate";

/** Days in a row that bear the same rate by the same divisor. */
export interface RatePeriod extends UnderpaymentRate {
  /** Interest begins the day after this one. */
  readonly from: CalendarDate;
  /** The last day that bears interest. */
  readonly to: CalendarDate;
  readonly days: number;
  /** Days of the calendar year: the daily rate is the yearly one by 365, or by 366 in a leap year. */
  readonly divisor: 365 | 366;
}

function lastDayAtSameRate(day: CalendarDate, { table }: InterestRates): CalendarDate {
  const yearEnds = calendarDate(`${String(yearOf(day))}-12-31`);
  const next = table.entries.find((entry) => entry.from > day);
  const rateEnds = next
    ? addDays(next.from, -1)
    : day <= table.knownThrough
      ? table.knownThrough
      : yearEnds;
  return rateEnds < yearEnds ? rateEnds : yearEnds;
}

/** Ends of the periods of a table, by the day asked for; the table never changes. */
const ends = new WeakMap<InterestRates["table"], Map<CalendarDate, CalendarDate>>();

function periodEnd(day: CalendarDate, rates: InterestRates): CalendarDate {
  const known = ends.get(rates.table) ?? new Map<CalendarDate, CalendarDate>();
  ends.set(rates.table, known);
  const end = known.get(day) ?? lastDayAtSameRate(day, rates);
  known.set(day, end);
  return end;
}

/**
 * Cuts a span into periods of one rate and one divisor.
 *
 * The first day of the span bears no interest and the last one does, so that the last day of a quarter belongs to that quarter.
 *
 * @param from - The day the amount was due.
 * @param to - The day it is paid.
 * @param rates - Published rates and the assumed one.
 * @returns The periods in order; none when `to` is not after `from`.
 * @throws NotPublishedError where a day has no rate.
 * @see 26 CFR 301.6622-1(a), (c)(2)
 *
 * @example
 * ratePeriods("2002-04-15", "2002-09-30", rates).map((period) => period.days) //=> [76, 92]
 */
export function ratePeriods(
  from: CalendarDate,
  to: CalendarDate,
  rates: InterestRates
): readonly RatePeriod[] {
  const periods: RatePeriod[] = [];
  for (let begins = from; begins < to;) {
    const firstDay = addDays(begins, 1);
    const end = periodEnd(firstDay, rates);
    const through = end < to ? end : to;
    periods.push({
      ...underpaymentRate(firstDay, rates),
      from: begins,
      to: through,
      days: daysBetween(begins, through),
      divisor: daysInYear(yearOf(firstDay)),
    });
    begins = through;
  }
  return periods;
}
