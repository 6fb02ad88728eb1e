import { addDays } from "../../calendar/calendarDate";
import { monthEnd, monthsBegun } from "../../calendar/monthOfDelinquency";
import { ZERO, type Decimal } from "../../money/dollars";
import type { DueDate } from "../dueDate/dueDate";
import type { FailureToPayPenalty } from "./failureToPayPenalty";

/**
 * Failure-to-pay penalty for the months that also have a failure-to-file penalty. It reduces the failure-to-file penalty.
 *
 * Months of the two penalties are the same if both due dates have the same day number. If a postponement moves only one of them, a
 * month of failure to file is compared with the month of failure to pay in which it begins; no authority says otherwise.
 *
 * @param filingDue - Due date of the return, including any extension.
 * @param months - Months of the failure-to-file penalty.
 * @param paymentDue - Due date of the payment for the failure-to-pay penalty.
 * @param failureToPay - The failure-to-pay penalty with its periods.
 * @returns Dollars, not rounded; zero if no month has both penalties.
 * @see 26 U.S.C. 6651(c)(1)
 *
 * @example
 * // 26 CFR 301.6651-1(f), Example 2: five of eight months at 0.5% on $500
 * //=> 12.50
 */
export function concurrentMonths(
  filingDue: DueDate,
  months: number,
  paymentDue: DueDate,
  failureToPay: FailureToPayPenalty
): Decimal {
  const firstDay = addDays(monthEnd(filingDue.countedFrom, 0), 1);
  const first = monthsBegun(paymentDue.countedFrom, firstDay);
  const last = first + months - 1;
  let reduction = ZERO;
  for (const period of failureToPay.periods) {
    const lastOfPeriod = period.firstMonth + period.months - 1;
    const both = Math.min(last, lastOfPeriod) - Math.max(first, period.firstMonth) + 1;
    if (both === period.months) reduction = reduction.plus(period.amount);
    else if (both > 0)
      reduction = reduction.plus(period.base.times(period.monthlyRate).times(both));
  }
  return reduction;
}
