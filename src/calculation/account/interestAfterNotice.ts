import type { CalendarDate } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import { interestAccount } from "../penalty/interestAccount";
import { paidBeyond } from "../penalty/paidBeyond";
import type { UnderpaymentInterest } from "../penalty/underpaymentInterest";
import type { InterestRates } from "../penalty/underpaymentRate";
import type { NoticeAndDemand } from "./noticeAndDemand";

/**
 * Interest on the failure-to-pay penalty that a notice and demand bills, from the date of the notice until the penalty is paid.
 *
 * There is none on what is paid within the time to pay. What is paid beyond the tax pays this penalty first, the order of `charges`.
 * Penalty that accrues after the notice has no interest before a notice of its own, which is not calculated.
 *
 * @param notice - The notice and its payments.
 * @param totalTax - Dollars of tax, which the payments pay first.
 * @param rates - Published rates and the assumed rate, if any.
 * @returns The interest through a date with its periods, not rounded. A date must not be before the date asked for last.
 * @throws NotInTableError if a date has no rate.
 * @see 26 U.S.C. 6601(e)(2)(A); 26 CFR 301.6601-1(f)(3)
 *
 * @example
 * // notice of June 2, 2025 for a penalty of $500: none if paid on June 23, of 22 days if paid on June 24
 */
export function interestAfterNotice(
  notice: NoticeAndDemand,
  totalTax: Decimal,
  rates: InterestRates
): (through: CalendarDate) => UnderpaymentInterest {
  const { noticeOn, failureToPay, paymentsForInterest } = notice;
  const beyondTax = paidBeyond(totalTax, paymentsForInterest);
  return interestAccount(failureToPay, noticeOn, beyondTax, rates);
}
