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

function lastDayOfYear(year: number): CalendarDate {
  return calendarDate(`${String(year)}-12-31`);
}

/** The period that begins after `from` and runs until the rate, or the year and with it the divisor, changes. */
function wholePeriod(from: CalendarDate, rates: InterestRates): RatePeriod {
  const { entries, knownThrough } = rates.table;
  const firstDay = addDays(from, 1);
  const next = entries.find((entry) => entry.from > firstDay);
  const ends = [lastDayOfYear(yearOf(firstDay))];
  if (next) ends.push(addDays(next.from, -1));
  else if (firstDay <= knownThrough) ends.push(knownThrough);
  const to = ends.reduce((one, other) => (one < other ? one : other));
  const { rate, source } = underpaymentRate(firstDay, rates);
  const divisor = daysInYear(yearOf(firstDay));
  return { rate, source, from, to, days: daysBetween(from, to), divisor };
}

const worked = new WeakMap<InterestRates["table"], readonly RatePeriod[]>();

/** Every period of the published rates, in order; the table never changes. */
function publishedPeriods(rates: InterestRates): readonly RatePeriod[] {
  const { table } = rates;
  const known = worked.get(table);
  if (known) return known;
  const periods: RatePeriod[] = [];
  for (let from = addDays(table.knownFrom, -1); from < table.knownThrough;) {
    const period = wholePeriod(from, rates);
    periods.push(period);
    from = period.to;
  }
  worked.set(table, periods);
  return periods;
}

function clipped(period: RatePeriod, from: CalendarDate, to: CalendarDate): RatePeriod {
  const { rate, source, divisor } = period;
  const begins = period.from > from ? period.from : from;
  const through = period.to < to ? period.to : to;
  if (begins === period.from && through === period.to) return period;
  return { rate, source, from: begins, to: through, days: daysBetween(begins, through), divisor };
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
  if (to <= from) return [];
  const published = publishedPeriods(rates);
  const covered = published.filter((period) => period.to > from && period.from < to);
  const periods = covered.map((period) => clipped(period, from, to));
  const first = periods[0];
  // A day outside the published rates is refused here, or bears the assumed rate.
  if (!first || first.from > from) underpaymentRate(addDays(from, 1), rates);
  for (let begins = periods.at(-1)?.to ?? from; begins < to;) {
    const period = clipped(wholePeriod(begins, rates), begins, to);
    periods.push(period);
    begins = period.to;
  }
  return periods;
}
