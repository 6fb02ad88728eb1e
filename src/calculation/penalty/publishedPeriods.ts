import {
  addDays,
  calendarDate,
  daysBetween,
  daysInYear,
  earlierDate,
  yearOf,
  type CalendarDate,
} from "../../calendar/calendarDate";
import { remembered } from "../../calendar/remembered";
import { Decimal } from "../../money/dollars";
import { dailyCompounding } from "./dailyCompounding";
import { underpaymentRate, type InterestRates, type UnderpaymentRate } from "./underpaymentRate";

/** Consecutive days with one rate and one divisor. */
export interface RatePeriod extends UnderpaymentRate {
  /** Interest accrues from the next day. */
  readonly from: CalendarDate;
  /** Last date on which interest accrues. */
  readonly to: CalendarDate;
  readonly days: number;
  /** Days in the calendar year: the daily rate is the annual rate divided by 365, or by 366 in a leap year. */
  readonly divisor: 365 | 366;
}

function lastDayOfYear(year: number): CalendarDate {
  return calendarDate(`${String(year)}-12-31`);
}

/**
 * The period that begins after a date and ends when the rate changes, or when the year and so the divisor changes.
 *
 * @throws NotInTableError if the next day has no rate.
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

/** The periods of the published rates, and what a dollar due before the first has grown to at the beginning of each. */
export interface PublishedPeriods {
  readonly periods: readonly RatePeriod[];
  /** As long as `periods`. */
  readonly growthBefore: readonly Decimal[];
}

const periodsOfTable = remembered(
  (table: InterestRates["table"]): PublishedPeriods => {
    const periods: RatePeriod[] = [];
    const growthBefore: Decimal[] = [];
    let growth = new Decimal(1);
    for (let from = addDays(table.knownFrom, -1); from < table.knownThrough;) {
      const period = wholePeriod(from, { table });
      periods.push(period);
      growthBefore.push(growth);
      growth = growth.times(dailyCompounding(period.rate, period.divisor, period.days));
      from = period.to;
    }
    return { periods, growthBefore };
  },
  (table) => table,
  10
);

/** Every period of the published rates, in order. */
export function publishedPeriods({ table }: InterestRates): PublishedPeriods {
  return periodsOfTable(table);
}
