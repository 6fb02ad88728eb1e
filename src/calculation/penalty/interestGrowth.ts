import { daysBetween, type CalendarDate } from "../../calendar/calendarDate";
import { Decimal } from "../../money/dollars";
import { dailyCompounding } from "./dailyCompounding";
import { publishedPeriods, type RatePeriod } from "./publishedPeriods";
import { ratePeriods } from "./ratePeriods";
import type { InterestRates } from "./underpaymentRate";

/** The first of the periods, which rise, that passes a test no later one fails; their count where none does. */
function firstThat(
  passes: (period: RatePeriod) => boolean,
  periods: readonly RatePeriod[]
): number {
  let low = 0;
  let high = periods.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const period = periods[middle];
    if (period && passes(period)) high = middle;
    else low = middle + 1;
  }
  return low;
}

function growthWithin(period: RatePeriod, days: number): Decimal {
  return dailyCompounding(period.rate, period.divisor, days);
}

/**
 * What one dollar becomes from the day it was due until it is paid, over every rate on the way.
 *
 * Over published rates in closed form: the growth of whole periods is the quotient of two running products, so that a span of
 * thirty years costs no more than one of thirty weeks. Assumed rates are multiplied period by period.
 *
 * @param from - The day the dollar was due.
 * @param to - The day it is paid.
 * @param rates - Published rates and the assumed one.
 * @returns One plus the interest on a dollar.
 * @throws NotInTableError where a day has no rate.
 * @see 26 U.S.C. 6622(a)
 */
export function interestGrowth(
  from: CalendarDate,
  to: CalendarDate,
  rates: InterestRates
): Decimal {
  if (to <= from) return new Decimal(1);
  const { periods, growthBefore } = publishedPeriods(rates);
  const first = firstThat((period) => period.to > from, periods);
  const last = firstThat((period) => period.to >= to, periods);
  const begins = periods[first];
  const ends = periods[last];
  if (!begins || !ends || begins.from > from) {
    return ratePeriods(from, to, rates).reduce(
      (growth, period) => growth.times(growthWithin(period, period.days)),
      new Decimal(1)
    );
  }
  if (begins === ends) return growthWithin(begins, daysBetween(from, to));
  const growthFrom = growthBefore[first + 1] ?? new Decimal(1);
  const growthTo = growthBefore[last] ?? growthFrom;
  return growthWithin(begins, daysBetween(from, begins.to))
    .times(growthTo.div(growthFrom))
    .times(growthWithin(ends, daysBetween(ends.from, to)));
}
