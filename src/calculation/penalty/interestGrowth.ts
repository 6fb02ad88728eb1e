import { addDays, daysBetween, type CalendarDate } from "../../calendar/calendarDate";
import { remembered } from "../../calendar/remembered";
import { Decimal } from "../../money/dollars";
import { dailyCompounding } from "./dailyCompounding";
import { publishedPeriods, type RatePeriod } from "./publishedPeriods";
import { ratePeriods } from "./ratePeriods";
import type { InterestRates } from "./underpaymentRate";

type RateTable = InterestRates["table"];

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

/** Growth between two dates that published periods cover: the quotient of two cumulative products, and the days at each end. */
function growthBetween(from: CalendarDate, to: CalendarDate, table: RateTable): Decimal {
  const { periods, growthBefore } = publishedPeriods({ table });
  const first = firstThat((period) => period.to > from, periods);
  const last = firstThat((period) => period.to >= to, periods);
  const begins = periods[first];
  const ends = periods[last];
  if (!begins || !ends) throw new RangeError("the dates are not covered");
  if (begins === ends) return growthWithin(begins, daysBetween(from, to));
  const growthFrom = growthBefore[first + 1] ?? new Decimal(1);
  const growthTo = growthBefore[last] ?? growthFrom;
  return growthWithin(begins, daysBetween(from, begins.to))
    .times(growthTo.div(growthFrom))
    .times(growthWithin(ends, daysBetween(ends.from, to)));
}

/** More than any date, so that two dates make one number. */
const MORE_THAN_DATES = 2 ** 22;
const MOST_SPANS = 20_000;
/** The clients of a list have the same few dates. A span is kept by its dates alone, so none reaches an assumed rate. */
const growthOfSpans = remembered(
  (table: RateTable) =>
    remembered(
      (from: CalendarDate, to: CalendarDate) => growthBetween(from, to, table),
      (from, to) => from * MORE_THAN_DATES + to,
      MOST_SPANS
    ),
  (table) => table,
  10
);

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
  const { table } = rates;
  if (to <= from) return new Decimal(1);
  // Interest accrues from the day after the due date, so that this day is the first that needs a rate.
  if (from < addDays(table.knownFrom, -1) || to > table.knownThrough)
    return ratePeriods(from, to, rates).reduce(
      (growth, period) => growth.times(growthWithin(period, period.days)),
      new Decimal(1)
    );
  return growthOfSpans(table)(from, to);
}
