import {
  addDays,
  calendarDate,
  daysBetween,
  daysInYear,
  earlierDate,
  yearOf,
  type CalendarDate,
} from "../../calendar/calendarDate";
import { Decimal } from "../../money/dollars";
import { dailyCompounding } from "./dailyCompounding";
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

/**
 * The period that begins after a day and runs until the rate, or the year and with it the divisor, changes.
 *
 * @throws NotInTableError where the day after has no rate.
 */
export function wholePeriod(from: CalendarDate, rates: InterestRates): RatePeriod {
  const { entries, knownThrough } = rates.table;
  const firstDay = addDays(from, 1);
  const next = entries.find((entry) => entry.from > firstDay);
  const ends = [lastDayOfYear(yearOf(firstDay))];
  if (next) ends.push(addDays(next.from, -1));
  else if (firstDay <= knownThrough) ends.push(knownThrough);
  const to = ends.reduce(earlierDate);
  const { rate, source } = underpaymentRate(firstDay, rates);
  const divisor = daysInYear(yearOf(firstDay));
  return { rate, source, from, to, days: daysBetween(from, to), divisor };
}

/** The periods of the published rates, and what a dollar due before the first has become at the beginning of each. */
export interface PublishedPeriods {
  readonly periods: readonly RatePeriod[];
  /** As long as `periods`. */
  readonly growthBefore: readonly Decimal[];
}

const worked = new WeakMap<InterestRates["table"], PublishedPeriods>();

/** Every period of the published rates, in order, worked out once: the table never changes. */
export function publishedPeriods(rates: InterestRates): PublishedPeriods {
  const { table } = rates;
  const known = worked.get(table);
  if (known) return known;
  const periods: RatePeriod[] = [];
  const growthBefore: Decimal[] = [];
  let growth = new Decimal(1);
  for (let from = addDays(table.knownFrom, -1); from < table.knownThrough;) {
    const period = wholePeriod(from, rates);
    periods.push(period);
    growthBefore.push(growth);
    growth = growth.times(dailyCompounding(period.rate, period.divisor, period.days));
    from = period.to;
  }
  const found = { periods, growthBefore };
  worked.set(table, found);
  return found;
}
