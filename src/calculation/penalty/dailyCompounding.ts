import { remembered } from "../../calendar/remembered";
import type { Decimal } from "../../money/dollars";

const growthOf = remembered(
  (rate: Decimal, divisor: 365 | 366, days: number): Decimal => rate.div(divisor).plus(1).pow(days),
  (rate, divisor, days) => `${rate.toString()}/${String(divisor)}^${String(days)}`,
  20_000
);

/**
 * What one dollar grows to at an annual rate compounded daily.
 *
 * In closed form, (1 + rate / divisor) to the power of the days, without a loop over days.
 *
 * @param rate - Fraction per year.
 * @param divisor - 365, or 366 for days of a leap year.
 * @param days - Whole days.
 * @returns One plus the interest factor, to 28 significant digits.
 * @see 26 U.S.C. 6622(a); 26 CFR 301.6622-1(a)
 *
 * @example
 * dailyCompounding(new Decimal("0.06"), 365, 76) //=> 1.012570476… (printed factor .012570476)
 */
export function dailyCompounding(rate: Decimal, divisor: 365 | 366, days: number): Decimal {
  return growthOf(rate, divisor, days);
}
