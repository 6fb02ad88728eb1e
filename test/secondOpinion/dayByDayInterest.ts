import { civil, isLeap } from "./civilDays";
import { pointsOn, type Assumed } from "./quarterlyRates";

/**
 * Interest as section 6622 and 26 CFR 301.6622-1(a) say it, one day after another: what is owed grows each day by the rate of that
 * day divided by the days of its year. Whole numbers only: cents times ten to the thirtieth.
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
 * Interest in cents on an amount due on a day, payments taking off the amount and never the interest, until the amount is paid or
 * the last day is reached. A payment bears on the day after it.
 *
 * @param cents - What was due.
 * @param due - The day it was due, which bears no interest.
 * @param payments - In any order.
 * @param through - The last day.
 * @param assumed - The rate of days that no ruling has reached.
 * @throws NoFigure for such a day where no rate is assumed.
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
