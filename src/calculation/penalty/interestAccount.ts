import type { CalendarDate } from "../../calendar/calendarDate";
import { isMoreThanZero, ZERO, type Decimal } from "../../money/dollars";
import { dailyCompounding } from "./dailyCompounding";
import { interestGrowth } from "./interestGrowth";
import { ratePeriods } from "./ratePeriods";
import type { InterestPeriod, Payment, UnderpaymentInterest } from "./underpaymentInterest";
import type { InterestRates } from "./underpaymentRate";

/** An unpaid amount from one payment to the next. */
interface Stretch {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly unpaid: Decimal;
}

function interestPeriods(run: readonly Stretch[], rates: InterestRates): readonly InterestPeriod[] {
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
 * Interest on an amount, asked for one date after another. Each payment is looked at once, so that a long payment history takes no
 * more time for each of its rows.
 *
 * @param amount - Dollars unpaid on the due date.
 * @param due - The due date.
 * @param payments - Payments of the amount, in order of dates.
 * @param rates - Published rates and the assumed rate, if any.
 * @returns The interest through a date, which must not be before the date asked for last. Asking changes nothing: interest is added
 *   to the amount only where a payment divides the time.
 * @throws NotInTableError if a date has no rate.
 * @see 26 U.S.C. 6601(a), 6622
 *
 * @example
 * const through = interestAccount(usd(10_000), april15, [], rates);
 * [through(june30), through(december31)]
 */
export function interestAccount(
  amount: Decimal,
  due: CalendarDate,
  payments: readonly Payment[],
  rates: InterestRates
): (through: CalendarDate) => UnderpaymentInterest {
  const run: Stretch[] = [];
  let accrued = ZERO;
  let unpaid = amount;
  let from = due;
  let next = 0;
  const accruesTo = (to: CalendarDate): boolean => to > from && isMoreThanZero(unpaid);
  const accruedTo = (to: CalendarDate): Decimal =>
    unpaid
      .plus(accrued)
      .times(interestGrowth(from, to, rates))
      .minus(unpaid);

  return (through) => {
    for (let payment = payments[next]; payment && payment.date <= through;) {
      if (accruesTo(payment.date)) {
        accrued = accruedTo(payment.date);
        run.push({ from, to: payment.date, unpaid });
        from = payment.date;
      }
      unpaid = unpaid.minus(payment.amount);
      payment = payments[++next];
    }
    const last = accruesTo(through) ? [{ from, to: through, unpaid }] : [];
    const before = run.length;
    return {
      amount: last.length > 0 ? accruedTo(through) : accrued,
      periods: () => interestPeriods([...run.slice(0, before), ...last], rates),
    };
  };
}
