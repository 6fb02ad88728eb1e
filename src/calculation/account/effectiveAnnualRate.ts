import { daysBetween, type CalendarDate } from "../../calendar/calendarDate";
import { Decimal, ZERO } from "../../money/dollars";

const DAYS_OF_A_YEAR = 365;

/**
 * Effective annual rate of a delay: what the charges amount to a year, compounded, so that they can be held against the rate of
 * a loan.
 *
 * @param charges - Dollars of additions and interest for the delay.
 * @param unpaid - Dollars that were not paid in time.
 * @param due - The last day to pay without interest, as the law names it.
 * @param paidOn - The day they were paid.
 * @returns A fraction a year, not rounded; zero where nothing was unpaid or nothing late.
 *
 * @example
 * // 200 on 5,000 over 183 days
 * //=> 0.0813…
 */
export function effectiveAnnualRate(
  charges: Decimal,
  unpaid: Decimal,
  due: CalendarDate,
  paidOn: CalendarDate
): Decimal {
  const days = daysBetween(due, paidOn);
  if (!unpaid.greaterThan(0) || days <= 0) return ZERO;
  const growth = charges.div(unpaid).plus(1);
  return growth.pow(new Decimal(DAYS_OF_A_YEAR).div(days)).minus(1);
}
