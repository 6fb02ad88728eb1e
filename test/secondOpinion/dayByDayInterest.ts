import { civil, isLeap } from "./civilDays";
import { pointsOn, type Assumed } from "./quarterlyRates";

/**
 * Interest under section 6622 and 26 CFR 301.6622-1(a), day by day: the amount owed grows each day by the annual rate divided by the
 * days of the year. All numbers are whole: cents times 10 to the 30th power.
 */
const SCALE = 10n ** 30n;

/** A payment by day number, in cents. */
export interface Payment {
  readonly day: number;
  readonly cents: number;
}

/** Rounds half up. */
function toCents(scaled: bigint): number {
  return Number((scaled + SCALE / 2n) / SCALE);
}

/**
 * Interest in cents on an amount from its due date until it is paid or until the last date. Payments reduce the amount, never the
 * interest, from the day after the payment.
 *
 * @param cents - The amount due.
 * @param due - The due date, a day without interest.
 * @param payments - In any order.
 * @param through - The last date.
 * @param assumed - The rate for days after the last published quarter.
 * @throws NoFigure for such a day without an assumed rate.
 */
export function dayByDayInterest(
  cents: number,
  due: number,
  payments: readonly Payment[],
  through: number,
  assumed?: Assumed
): number {
  let unpaid = BigInt(cents) * SCALE;
  let interest = 0n;
  for (let day = due + 1; day <= through; day++) {
    for (const payment of payments)
      if (payment.day === day - 1) unpaid -= BigInt(payment.cents) * SCALE;
    if (unpaid <= 0n) break;
    const divisor = isLeap(civil(day).year) ? 3_660_000n : 3_650_000n;
    interest += ((unpaid + interest) * BigInt(pointsOn(day, assumed))) / divisor;
  }
  return toCents(interest);
}
