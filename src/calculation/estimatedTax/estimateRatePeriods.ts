import {
  daysBetween,
  daysInYear,
  earlierDate,
  lastDayOfMonth,
  laterDate,
  yearOf,
  type CalendarDate,
} from "../../calendar/calendarDate";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import { dateAfterTaxYear } from "../dueDate/dateAfterTaxYear";
import type { RatePeriod } from "../penalty/publishedPeriods";
import { ratePeriods } from "../penalty/ratePeriods";
import { underpaymentRate, type AssumedRate } from "../penalty/underpaymentRate";
import type { TaxYear } from "../taxYear";

/** Consecutive days with one rate and one divisor, in one quarter or several. */
export interface EstimateRatePeriod extends Omit<RatePeriod, "source"> {
  /** The rulings that set the rate; none if it is assumed. */
  readonly sources: readonly Source[];
}

/**
 * Rate periods for the estimated tax penalty, from the first installment through the date on which the penalty ends.
 *
 * The rate of the third month after the tax year also applies to the first fifteen days of the fourth month, instead of the rate of
 * the new quarter (section 6621(b)(2)(B)). Consecutive quarters at one rate are one period, as on Form 2210.
 *
 * @param from - Due date of the first installment.
 * @param taxYear - The year whose tax is estimated.
 * @param end - The last date of the penalty: the 15th day of the fourth month after the year, or earlier.
 * @param assumedRate - The rate beyond the published ones, if any.
 * @param rules - Published rates, and the month whose rate continues.
 * @returns The periods in order.
 * @throws NotInTableError if a date has no rate.
 * @see 26 U.S.C. 6621(b)(2)(B), 6654(a)
 */
export function estimateRatePeriods(
  from: CalendarDate,
  taxYear: TaxYear,
  end: CalendarDate,
  assumedRate: AssumedRate | undefined,
  rules: Pick<Rulebook, "requiredAnnualPayment" | "underpaymentRate">
): readonly EstimateRatePeriod[] {
  const rates = { table: rules.underpaymentRate, assumedRate };
  const { continuedRateMonth } = entryOn(rules.requiredAnnualPayment, taxYear.lastDay).figures;
  const lastOfRateMonth = lastDayOfMonth(
    dateAfterTaxYear(taxYear, continuedRateMonth.toNumber(), 1)
  );
  const published = ratePeriods(from, earlierDate(lastOfRateMonth, end), rates);
  const sameRateFrom = laterDate(from, lastOfRateMonth);
  const sameRate: readonly RatePeriod[] =
    sameRateFrom < end
      ? [
          {
            ...underpaymentRate(lastOfRateMonth, rates),
            from: sameRateFrom,
            to: end,
            days: daysBetween(sameRateFrom, end),
            divisor: daysInYear(yearOf(end)),
          },
        ]
      : [];
  const periods: EstimateRatePeriod[] = [];
  for (const { source, ...period } of [...published, ...sameRate]) {
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
