import { addDays, type CalendarDate } from "../../calendar/calendarDate";
import { monthEnd, monthsBegun } from "../../calendar/monthOfDelinquency";
import { Decimal, ZERO } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { DueDate } from "../dueDate/dueDate";
import type { LatePayment } from "./underpaymentInterest";

/** Figures of rules/failure-to-pay.json. */
export type FailureToPayRates = Rulebook["failureToPay"];

/** What is unpaid, and until when. */
export interface FailureToPayInput {
  /** When the tax was to be paid as far as this addition goes: June abroad, April for residents, whatever was asked. */
  readonly due: DueDate;
  /** Dollars unpaid after the last day for a timely payment. */
  readonly unpaid: Decimal;
  /** Payments after that day, rising by day. */
  readonly payments: readonly LatePayment[];
  /** Last day worked out where the payments do not reach the whole. */
  readonly through: CalendarDate;
  /** First day of an installment agreement, given only where the return was timely. */
  readonly agreementBegins?: CalendarDate | undefined;
}

/** Months in a row charged at one rate on one amount. */
export interface MonthsCharged {
  /** Months from the due date to the first of these; 1 is the month that follows it. */
  readonly firstMonth: number;
  readonly months: number;
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly monthlyRate: Decimal;
  /** Share of `base` charged: the monthly rates together, less what the maximum cuts off. */
  readonly share: Decimal;
  readonly base: Decimal;
  readonly amount: Decimal;
  readonly source: Source;
}

/** The addition with its months. */
export interface FailureToPayPenalty {
  readonly charged: readonly MonthsCharged[];
  /** Dollars, not rounded. */
  readonly amount: Decimal;
}

/**
 * Addition to tax for failure to pay.
 *
 * A share of the tax unpaid at the beginning of each month or part of a month, up to a maximum share in all. A payment on the
 * first day of a month is taken not to reduce that month, the cautious reading of section 6651(b)(2). Half the share while an
 * installment agreement is in effect at any time in the month, if the return was timely (section 6651(h)).
 *
 * @param input - Dollars and days.
 * @param rates - rules/failure-to-pay.json.
 * @returns The addition, and the runs of months at one rate and one amount.
 * @throws NotInTableError for a month that begins before the first figure held.
 * @see 26 U.S.C. 6651(a)(2), (b)(2), (h); 26 CFR 301.6651-1(a)(2), (b), (d)(2)
 *
 * @example
 * // $500 due 1970-04-15, paid 1970-12-02: eight months
 * //=> 20.00
 */
export function failureToPayPenalty(
  input: FailureToPayInput,
  rates: FailureToPayRates
): FailureToPayPenalty {
  const { due, payments, through, agreementBegins } = input;
  const countedFrom = due.countedFrom;
  const agreementMonth =
    agreementBegins === undefined
      ? Infinity
      : Math.max(1, monthsBegun(countedFrom, agreementBegins));
  const charged: MonthsCharged[] = [];
  let amount = ZERO;
  let shareSoFar = ZERO;

  const chargeMonths = (first: number, last: number, base: Decimal): void => {
    for (let month = first; month <= last;) {
      const from = addDays(monthEnd(countedFrom, month - 1), 1);
      const { figures, source } = entryOn(rates, from);
      const left = figures.maximumRate.minus(shareSoFar);
      if (!left.greaterThan(0)) return;
      const underAgreement = month >= agreementMonth;
      const next = rates.entries.find((entry) => entry.from > from);
      const lastAtSameRate = Math.min(
        last,
        underAgreement ? Infinity : agreementMonth - 1,
        next ? monthsBegun(countedFrom, addDays(next.from, -1)) : Infinity
      );
      const monthlyRate = underAgreement ? figures.agreementRate : figures.monthlyRate;
      const untilMaximum = left.div(monthlyRate).ceil().toNumber();
      const months = Math.min(lastAtSameRate - month + 1, untilMaximum);
      const share = Decimal.min(monthlyRate.times(months), left);
      const addition = base.times(share);
      const to = monthEnd(countedFrom, month + months - 1);
      charged.push({
        firstMonth: month,
        months,
        from,
        to,
        monthlyRate,
        share,
        base,
        amount: addition,
        source,
      });
      amount = amount.plus(addition);
      shareSoFar = shareSoFar.plus(share);
      month += months;
    }
  };

  let unpaid = input.unpaid;
  let monthsSoFar = 0;
  const chargeThrough = (day: CalendarDate): void => {
    const months = day <= due.lastDay ? 0 : monthsBegun(countedFrom, day);
    if (unpaid.greaterThan(0) && months > monthsSoFar)
      chargeMonths(monthsSoFar + 1, months, unpaid);
    monthsSoFar = Math.max(monthsSoFar, months);
  };
  for (const payment of payments) {
    if (payment.day > through) break;
    chargeThrough(payment.day);
    unpaid = unpaid.minus(payment.amount);
  }
  chargeThrough(through);
  return { charged, amount };
}
