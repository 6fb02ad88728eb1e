import { daysBetween, type CalendarDate } from "../../calendar/calendarDate";
import { Decimal } from "../../money/dollars";
import { dailyCompounding } from "./dailyCompounding";
import { publishedPeriods, type RatePeriod } from "./publishedPeriods";
import { ratePeriods } from "./ratePeriods";
import type { InterestRates } from "./underpaymentRate";

/**
 * Index of the first period that passes a test, by binary search: every later period must pass it too.
 *
 * @returns The index; the number of periods if none passes.
 */
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
 * What one dollar grows to, with interest compounded daily, from its due date until it is paid.
 *
 * For published rates the growth over whole periods is the quotient of two cumulative products, so that thirty years take no more
 * time than thirty weeks. Assumed rates are multiplied period by period.
 *
 * @param from - The date the dollar was due.
 * @param to - The date it is paid.
 * @param rates - Published rates and the assumed rate, if any.
 * @returns One plus the interest on a dollar.
 * @throws NotInTableError if a date has no rate.
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
