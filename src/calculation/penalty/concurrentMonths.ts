import { addDays } from "../../calendar/calendarDate";
import { monthEnd, monthsBegun } from "../../calendar/monthOfDelinquency";
import { ZERO, type Decimal } from "../../money/dollars";
import type { DueDate } from "../dueDate/dueDate";
import type { FailureToPayPenalty } from "./failureToPayPenalty";

/**
 * Failure-to-pay addition of the months for which failure to file is charged too: what the latter is reduced by.
 *
 * Months of the two line up when both due dates share the day number. Where a postponement sets them apart, a month of failure to
 * file is paired with the month of failure to pay in which it begins; no authority says otherwise.
 *
 * @param filingDue - When the return was due, with its extension if there was one.
 * @param months - Months charged for failure to file.
 * @param paymentDue - When the tax was to be paid, as far as failure to pay goes.
 * @param failureToPay - That addition with its months.
 * @returns Dollars, not rounded; zero where no month bears both.
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
  for (const charged of failureToPay.charged) {
    const lastCharged = charged.firstMonth + charged.months - 1;
    const both = Math.min(last, lastCharged) - Math.max(first, charged.firstMonth) + 1;
    if (both === charged.months) reduction = reduction.plus(charged.amount);
    else if (both > 0)
      reduction = reduction.plus(charged.base.times(charged.monthlyRate).times(both));
  }
  return reduction;
}
