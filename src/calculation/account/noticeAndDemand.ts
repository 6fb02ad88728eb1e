import type { CalendarDate } from "../../calendar/calendarDate";
import { atLeastZero, toCents, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { AfterNotice, Charges } from "../penalty/charges";
import type { Payment } from "../penalty/underpaymentInterest";
import type { State } from "../state";
import { lastDateToPayNotice } from "./lastDateToPayNotice";

/** A notice and demand for all that is unpaid on its date. */
export interface NoticeAndDemand extends AfterNotice {
  readonly noticeOn: CalendarDate;
  /** Dollars and cents of tax, penalties and interest that it demands. */
  readonly demanded: Decimal;
  /** Last date to pay without interest after the notice. */
  readonly payBy: CalendarDate;
  readonly source: Source;
}

/** The account on the date of the notice. */
export interface NoticeInput {
  readonly noticeOn: CalendarDate;
  readonly totalTax: Decimal;
  /** Every payment, in order of dates. */
  readonly payments: readonly Payment[];
  /** Penalties and interest through the date of the notice. */
  readonly atNotice: Charges;
  readonly state: State | undefined;
}

/**
 * What a notice and demand bills, by when it is to be paid, and what payments within that time stop.
 *
 * It demands the tax, penalties and interest that are unpaid on its date. Interest on an amount paid within the time is not imposed
 * for the period after the notice (section 6601(e)(3)), so that such a payment counts for interest as made on the date of the notice.
 *
 * @param input - The account on the date of the notice.
 * @param rules - The time to pay, and the holidays.
 * @returns Amounts in dollars and cents, and the payments in order of the dates on which they stop interest.
 * @throws NotInTableError outside the dates that the tables cover.
 * @see 26 U.S.C. 6303(a), 6601(e)(2)(A), (e)(3); 26 CFR 301.6601-1(f)(3) to (5)
 */
export function noticeAndDemand(
  { noticeOn, totalTax, payments, atNotice, state }: NoticeInput,
  rules: Pick<Rulebook, "legalHolidays" | "noticeAndDemand">
): NoticeAndDemand {
  const paid = payments
    .filter(({ date }) => date <= noticeOn)
    .reduce((sum, { amount }) => sum.plus(amount), ZERO);
  const demanded = atLeastZero(totalTax.plus(atNotice.total).minus(paid));
  const payBy = lastDateToPayNotice(noticeOn, demanded, state, rules);
  return {
    noticeOn,
    demanded,
    payBy,
    failureToPay: toCents(atNotice.failureToPay.amount),
    paymentsForInterest: payments.map((payment) =>
      payment.date > noticeOn && payment.date <= payBy ? { ...payment, date: noticeOn } : payment
    ),
    source: entryOn(rules.noticeAndDemand, noticeOn).source,
  };
}
