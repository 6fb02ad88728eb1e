import { daysBetween, type CalendarDate } from "../../calendar/calendarDate";
import { Decimal, ZERO } from "../../money/dollars";

const DAYS_OF_A_YEAR = 365;

/**
 * Effective annual rate of paying late: its cost as a compounded annual rate, to compare with the rate of a loan.
 *
 * @param cost - Dollars that paying late causes; see `costOfPayingLate`.
 * @param unpaidTax - Dollars of tax not paid by the payment due date.
 * @param due - The payment due date that the law names, before any move for weekends and holidays.
 * @param paidOn - The date the tax was paid.
 * @returns A fraction per year, not rounded; zero if no tax was unpaid or it was not late.
 *
 * @example
 * // 200 on 5,000 over 183 days
 * //=> 0.0813…
 */
export function effectiveAnnualRate(
  cost: Decimal,
  unpaidTax: Decimal,
  due: CalendarDate,
  paidOn: CalendarDate
): Decimal {
  const days = daysBetween(due, paidOn);
  if (!unpaidTax.greaterThan(0) || days <= 0) return ZERO;
  const growth = cost.div(unpaidTax).plus(1);
  return growth.pow(new Decimal(DAYS_OF_A_YEAR).div(days)).minus(1);
}
