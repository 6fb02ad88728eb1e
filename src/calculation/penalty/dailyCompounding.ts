import type { Decimal } from "../../money/dollars";

/** Growth already worked out, by rate, divisor and days: a client list asks for the same few over and over. */
const worked = new Map<string, Decimal>();
const MOST_KEPT = 20_000;

/**
 * What one dollar becomes at a yearly rate compounded daily.
 *
 * In closed form, (1 + rate / divisor) to the power of the days: no loop over days.
 *
 * @param rate - Fraction a year.
 * @param divisor - 365, or 366 for days of a leap year.
 * @param days - Whole days.
 * @returns One plus the interest factor, to 28 significant digits.
 * @see 26 U.S.C. 6622(a); 26 CFR 301.6622-1(a)
 *
 * @example
 * dailyCompounding(new Decimal("0.06"), 365, 76) //=> 1.012570476… (printed factor .012570476)
 */
export function dailyCompounding(rate: Decimal, divisor: 365 | 366, days: number): Decimal {
  const key = `${rate.toString()}/${String(divisor)}^${String(days)}`;
  const known = worked.get(key);
  if (known) return known;
  const growth = rate.div(divisor).plus(1).pow(days);
  if (worked.size >= MOST_KEPT) worked.clear();
  worked.set(key, growth);
  return growth;
}
