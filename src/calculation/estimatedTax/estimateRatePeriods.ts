import {
  addDays,
  daysBetween,
  daysInYear,
  earlierDate,
  laterDate,
  yearOf,
  type CalendarDate,
} from "../../calendar/calendarDate";
import type { Source } from "../../rules/source";
import { dayAfterTaxYear } from "../dueDate/dayAfterTaxYear";
import type { RatePeriod } from "../penalty/publishedPeriods";
import { ratePeriods } from "../penalty/ratePeriods";
import { underpaymentRate, type InterestRates } from "../penalty/underpaymentRate";
import type { TaxYear } from "../taxYear";

/** Days in a row that bear the same rate by the same divisor, whatever quarters they lie in. */
export interface EstimateRatePeriod extends Omit<RatePeriod, "source"> {
  /** The rulings behind the rate; none where it is assumed. */
  readonly sources: readonly Source[];
}

/**
 * Rate periods for the addition on underpaid estimates, from the first installment through the day on which it ends.
 *
 * The rate of the third month after the tax year goes on through the first fifteen days of the fourth: the second quarter's
 * new rate does not count for these days (section 6621(b)(2)(B)). Neighbouring quarters at one rate are one period, as on Form 2210.
 *
 * @param from - Due date of the first installment.
 * @param taxYear - The year whose tax is estimated.
 * @param end - The last day that bears the addition: the 15th day of the fourth month after it, or sooner.
 * @param rates - Published rates and the assumed one.
 * @returns The periods in order.
 * @throws NotInTableError where a day has no rate.
 * @see 26 U.S.C. 6621(b)(2)(B), 6654(a)
 */
export function estimateRatePeriods(
  from: CalendarDate,
  taxYear: TaxYear,
  end: CalendarDate,
  rates: InterestRates
): readonly EstimateRatePeriod[] {
  const lastOfThirdMonth = addDays(dayAfterTaxYear(taxYear, 4, 1), -1);
  const published = ratePeriods(from, earlierDate(lastOfThirdMonth, end), rates);
  const carriedFrom = laterDate(from, lastOfThirdMonth);
  const carriedOn: readonly RatePeriod[] =
    carriedFrom < end
      ? [
          {
            ...underpaymentRate(lastOfThirdMonth, rates),
            from: carriedFrom,
            to: end,
            days: daysBetween(carriedFrom, end),
            divisor: daysInYear(yearOf(end)),
          },
        ]
      : [];
  const periods: EstimateRatePeriod[] = [];
  for (const { source, ...period } of [...published, ...carriedOn]) {
    const last = periods.at(-1);
    const sources = source ? [source] : [];
    if (last && last.divisor === period.divisor && last.rate.equals(period.rate)) {
      const more = sources.filter((one) => one !== last.sources.at(-1));
      periods[periods.length - 1] = {
        ...last,
        to: period.to,
        days: last.days + period.days,
        sources: [...last.sources, ...more],
      };
    } else {
      periods.push({ ...period, sources });
    }
  }
  return periods;
}
