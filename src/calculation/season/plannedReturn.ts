import { laterDate, type CalendarDate } from "../../calendar/calendarDate";
import { atLeastZero, isMoreThanZero, ZERO, type Decimal } from "../../money/dollars";
import type { ClientDates } from "../dueDate/clientDates";
import type { ChargesInput } from "../penalty/charges";
import type { AssumedRate } from "../penalty/underpaymentRate";
import type { ResendRules } from "../request/resendDeadline";
import { extensionInPlan } from "./extensionInPlan";
import { plannedDates } from "./plannedDates";
import { recordAsOf } from "./recordAsOf";
import type { RequestRecord } from "./requestRecord";

/** A client's amounts, record and plan on a date. */
export interface PlanInput {
  readonly dates: ClientDates;
  readonly record: RequestRecord;
  readonly asOf: CalendarDate;
  /** Dollars of estimated total tax, line 4. */
  readonly totalTax: Decimal;
  /** Dollars of total payments, line 5. */
  readonly payments: Decimal;
  /** Dollars paid with the request, line 7. */
  readonly paidWithRequest: Decimal;
  readonly plannedFilingDate: CalendarDate | undefined;
  readonly plannedPaymentDate: CalendarDate | undefined;
  readonly assumedRate: AssumedRate | undefined;
  /** Whether the preparer counts on the extension. It decides only while nothing is recorded. */
  readonly extensionPlanned?: boolean | undefined;
}

/** The return as recorded and planned, from which its penalties and interest follow. */
export interface PlannedReturn extends ChargesInput {
  /** Dollars of the payment with the request that the plan counts on. */
  readonly withRequest: Decimal;
  /** Date of the payment with the request if the request was made after the payment due date. */
  readonly withRequestOn: CalendarDate | undefined;
  /** Dollars that remain after that payment. */
  readonly balance: Decimal;
  /** Date the balance is paid. */
  readonly paidOn: CalendarDate;
}

/**
 * The return as the record and the plan have it on a date: whether the extension counts, when the return is filed, and what is paid
 * when.
 *
 * The payment with the request counts as paid by the payment due date if the request was made by then or still can be. With a later
 * request it counts on the date of the request. Without a request it is part of the balance once the payment due date has passed.
 *
 * @param input - Dollars and dates. What happened after the as-of date is ignored.
 * @param rules - Perfection period, methods.
 * @returns The return with its payments, dollars not rounded.
 * @throws NotInTableError for a rejected request if the perfection period is not in its table.
 */
export function plannedReturn(input: PlanInput, rules: ResendRules): PlannedReturn {
  const { dates, asOf, totalTax, payments, paidWithRequest, assumedRate } = input;
  const { plannedFilingDate, plannedPaymentDate } = input;
  const record = recordAsOf(input.record, asOf);
  const isRecorded = Object.values(record).some((date) => date !== undefined);
  const validExtension =
    (isRecorded ? undefined : input.extensionPlanned) ??
    extensionInPlan(dates, record, asOf, rules);
  const { filedOn, paidOn } = plannedDates(dates, {
    record,
    plannedFilingDate,
    plannedPaymentDate,
    validExtension,
    asOf,
  });

  const payBy = dates.payment.lastDay;
  const paidLater = (record.requestedOn ?? asOf) > payBy;
  const withRequest = paidLater && record.requestedOn === undefined ? ZERO : paidWithRequest;
  const withRequestOn = paidLater && isMoreThanZero(withRequest) ? record.requestedOn : undefined;
  const balance = atLeastZero(totalTax.minus(payments).minus(withRequest));
  const later = [
    ...(withRequestOn === undefined ? [] : [{ date: withRequestOn, amount: withRequest }]),
    ...(isMoreThanZero(balance) ? [{ date: paidOn, amount: balance }] : []),
  ];
  return {
    dates,
    totalTax,
    paidOnTime: withRequestOn === undefined ? payments.plus(withRequest) : payments,
    payments: later.toSorted((one, other) => (one.date < other.date ? -1 : 1)),
    filedOn,
    validExtension,
    through: later.reduce((last, { date }) => laterDate(last, date), filedOn),
    assumedRate,
    withRequest,
    withRequestOn,
    balance,
    paidOn,
  };
}
