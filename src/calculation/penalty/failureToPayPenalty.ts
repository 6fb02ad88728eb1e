import type { CalendarDate } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { DueDate } from "../dueDate/dueDate";
import { failureToPayAccount } from "./failureToPayAccount";
import type { Payment } from "./underpaymentInterest";

/** Figures of rules/failure-to-pay.json. */
export type FailureToPayRates = Rulebook["failureToPay"];

/** The unpaid tax and when it is paid. */
export interface FailureToPayInput {
  /** Due date for this penalty: June for a taxpayer out of the country, April for a resident, with or without an extension. */
  readonly due: Pick<DueDate, "countedFrom" | "lastDay">;
  /** Dollars of tax unpaid after that due date. */
  readonly unpaidTax: Decimal;
  /** Payments after that due date, in order of dates. */
  readonly payments: readonly Payment[];
  /** Last date of the calculation if the payments do not cover the tax. */
  readonly through: CalendarDate;
  /** Date an installment agreement is accepted; given only if the return was filed on time. */
  readonly agreementOn?: CalendarDate | undefined;
  readonly levyNoticeRate?: LevyNoticeRate | undefined;
}

/** The rate of the months that begin after a levy notice has run its days. */
export interface LevyNoticeRate {
  /** A month that begins after this date has the rate. */
  readonly after: CalendarDate;
  /** Fraction per month. */
  readonly monthlyRate: Decimal;
  readonly source: Source;
}

/** Consecutive months at one rate on one amount. */
export interface PenaltyPeriod {
  /** Months from the due date to the first of these; 1 is the month that follows it. */
  readonly firstMonth: number;
  readonly months: number;
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly monthlyRate: Decimal;
  /** Fraction of `base`: the sum of the monthly rates, limited by the maximum. */
  readonly share: Decimal;
  readonly base: Decimal;
  readonly amount: Decimal;
  readonly source: Source;
}

/** The penalty with its periods. */
export interface FailureToPayPenalty {
  readonly periods: readonly PenaltyPeriod[];
  /** Dollars, not rounded. */
  readonly amount: Decimal;
}

/**
 * Failure-to-pay penalty.
 *
 * A percent of the tax unpaid at the beginning of each month or part of a month, up to a maximum percent in all. A payment on the
 * first day of a month does not reduce the penalty for that month, the cautious reading of section 6651(b)(2). The rate is halved
 * for a month in which an installment agreement is in effect, if the return was filed on time (section 6651(h)). It is higher for a
 * month that begins more than ten days after a levy notice (section 6651(d)). The statute does not say which of the two prevails in
 * one month; the higher rate is the cautious reading. The agreement is taken to stay in effect.
 *
 * @param input - Dollars and dates.
 * @param rates - rules/failure-to-pay.json.
 * @returns The penalty and its periods of months at one rate and one amount.
 * @throws NotInTableError for a month that begins before the table.
 * @see 26 U.S.C. 6651(a)(2), (b)(2), (d), (h); 26 CFR 301.6651-1(a)(2), (b), (d)(2)
 *
 * @example
 * // $500 due 1970-04-15, paid 1970-12-02: eight months
 * //=> 20.00
 */
export function failureToPayPenalty(
  input: FailureToPayInput,
  rates: FailureToPayRates
): FailureToPayPenalty {
  return failureToPayAccount(input, rates)(input.through);
}
