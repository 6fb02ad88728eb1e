import type { CalendarDate } from "../../calendar/calendarDate";
import { ZERO, type Decimal } from "../../money/dollars";
import { dailyCompounding } from "./dailyCompounding";
import { interestGrowth } from "./interestGrowth";
import type { RatePeriod } from "./publishedPeriods";
import { ratePeriods } from "./ratePeriods";
import type { InterestRates } from "./underpaymentRate";

/** A payment of an amount due, made after it was due. */
export interface LatePayment {
  readonly day: CalendarDate;
  readonly amount: Decimal;
}

/** Interest of one period at one rate. */
export interface InterestPeriod {
  readonly period: RatePeriod;
  /** What bore interest: the amount unpaid and the interest on it so far. */
  readonly base: Decimal;
  readonly interest: Decimal;
}

/** Interest on an amount due, period by period. */
export interface UnderpaymentInterest {
  /** Dollars, not rounded. */
  readonly amount: Decimal;
  /** The working; worked out only when asked for, since a client list needs the amount alone. */
  readonly periods: readonly InterestPeriod[];
}

/** An unpaid amount from one payment to the next. */
interface Stretch {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly unpaid: Decimal;
}

function stretches(
  amount: Decimal,
  due: CalendarDate,
  payments: readonly LatePayment[],
  through: CalendarDate
): readonly Stretch[] {
  const found: Stretch[] = [];
  let unpaid = amount;
  let from = due;
  const runTo = (to: CalendarDate): void => {
    if (to <= from || !unpaid.greaterThan(0)) return;
    found.push({ from, to, unpaid });
    from = to;
  };
  for (const payment of payments) {
    if (payment.day > through) break;
    runTo(payment.day);
    unpaid = unpaid.minus(payment.amount);
  }
  runTo(through);
  return found;
}

function working(run: readonly Stretch[], rates: InterestRates): readonly InterestPeriod[] {
  const periods: InterestPeriod[] = [];
  let accrued = ZERO;
  for (const { from, to, unpaid } of run) {
    for (const period of ratePeriods(from, to, rates)) {
      const base = unpaid.plus(accrued);
      const growth = dailyCompounding(period.rate, period.divisor, period.days);
      const interest = base.times(growth.minus(1));
      periods.push({ period, base, interest });
      accrued = accrued.plus(interest);
    }
  }
  return periods;
}

/**
 * Interest on an amount from the day it was due until it is paid, compounded daily over every rate on the way.
 *
 * Payments reduce the amount itself; interest so far stays and bears interest too, until the amount is paid in full.
 *
 * @param amount - Dollars unpaid on the day they were due.
 * @param due - The day they were due; no extension moves it (section 6601(b)(1)).
 * @param payments - Payments after that day, rising by day.
 * @param through - Last day worked out where the payments do not reach the whole.
 * @param rates - Published rates and the assumed one.
 * @returns The interest with its periods.
 * @throws NotInTableError where a day has no rate.
 * @see 26 U.S.C. 6601(a), 6622
 *
 * @example
 * // $10,000 due 2002-04-15, paid 2002-06-30 at 6%
 * //=> 125.70
 */
export function underpaymentInterest(
  amount: Decimal,
  due: CalendarDate,
  payments: readonly LatePayment[],
  through: CalendarDate,
  rates: InterestRates
): UnderpaymentInterest {
  const run = stretches(amount, due, payments, through);
  const accrued = run.reduce(
    (sum, { from, to, unpaid }) =>
      unpaid
        .plus(sum)
        .times(interestGrowth(from, to, rates))
        .minus(unpaid),
    ZERO
  );
  return {
    amount: accrued,
    get periods() {
      return working(run, rates);
    },
  };
}
