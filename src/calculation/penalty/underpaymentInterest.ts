import type { CalendarDate } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import { interestAccount } from "./interestAccount";
import type { RatePeriod } from "./publishedPeriods";
import type { InterestRates } from "./underpaymentRate";

/** A payment. */
export interface Payment {
  readonly date: CalendarDate;
  readonly amount: Decimal;
}

/** Interest of one period at one rate. */
export interface InterestPeriod {
  readonly period: RatePeriod;
  /** Dollars on which interest accrues: the unpaid amount and the interest to date. */
  readonly base: Decimal;
  readonly interest: Decimal;
}

/** Interest on an amount due, period by period. */
export interface UnderpaymentInterest {
  /** Dollars, not rounded. */
  readonly amount: Decimal;
  /** Calculated only when asked for, because a client list needs the amount alone. */
  readonly periods: () => readonly InterestPeriod[];
}

/**
 * Interest on an amount from its due date until it is paid, compounded daily at every rate in that time.
 *
 * Payments reduce the amount itself; those by the due date leave less that accrues interest at all. Interest to date remains, and
 * interest accrues on it too, until the amount is paid in full.
 *
 * @param amount - Dollars unpaid on the due date.
 * @param due - The due date; no extension moves it (section 6601(b)(1)).
 * @param payments - Payments of the amount, in order of dates.
 * @param through - Last date of the calculation if the payments do not cover the amount.
 * @param rates - Published rates and the assumed rate, if any.
 * @returns The interest with its periods.
 * @throws NotInTableError if a date has no rate.
 * @see 26 U.S.C. 6601(a), 6622
 *
 * @example
 * // $10,000 due 2002-04-15, paid 2002-06-30 at 6%
 * //=> 125.70
 */
export function underpaymentInterest(
  amount: Decimal,
  due: CalendarDate,
  payments: readonly Payment[],
  through: CalendarDate,
  rates: InterestRates
): UnderpaymentInterest {
  return interestAccount(amount, due, payments, rates)(through);
}
