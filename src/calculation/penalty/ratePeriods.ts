import {
  addDays,
  daysBetween,
  earlierDate,
  laterDate,
  type CalendarDate,
} from "../../calendar/calendarDate";
import { publishedPeriods, wholePeriod, type RatePeriod } from "./publishedPeriods";
import { underpaymentRate, type InterestRates } from "./underpaymentRate";

function clipped(period: RatePeriod, from: CalendarDate, to: CalendarDate): RatePeriod {
  const { rate, source, divisor } = period;
  const begins = laterDate(period.from, from);
  const through = earlierDate(period.to, to);
  if (begins === period.from && through === period.to) return period;
  return { rate, source, from: begins, to: through, days: daysBetween(begins, through), divisor };
}

/**
 * Divides the time from one date to another into periods of one rate and one divisor.
 *
 * Interest accrues on the last date but not on the first, so that the last day of a quarter has the rate of that quarter.
 *
 * @param from - The date the amount was due.
 * @param to - The date it is paid.
 * @param rates - Published rates and the assumed rate, if any.
 * @returns The periods in order; none if `to` is not after `from`.
 * @throws NotInTableError if a date has no rate.
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
  const covered = publishedPeriods(rates).periods.filter(
    (period) => period.to > from && period.from < to
  );
  const periods = covered.map((period) => clipped(period, from, to));
  const first = periods[0];
  // Before the published rates this throws; after them it takes the assumed rate, or throws if there is none.
  if (!first || first.from > from) underpaymentRate(addDays(from, 1), rates);
  for (let begins = periods.at(-1)?.to ?? from; begins < to;) {
    const period = clipped(wholePeriod(begins, rates), begins, to);
    periods.push(period);
    begins = period.to;
  }
  return periods;
}
