import { atLeastZero, type Decimal } from "../../money/dollars";
import type { Payment } from "./underpaymentInterest";

/**
 * What payments leave over once they have paid an amount: the part of each payment beyond the amount, on the date of the payment.
 *
 * @param amount - Dollars that the payments pay first.
 * @param payments - In order of dates.
 * @returns The parts beyond the amount, in order of dates; empty if the payments do not exceed it.
 *
 * @example
 * // 1,000 to pay, 700 on June 1 and 400 on July 1
 * //=> 100 on July 1
 */
export function paidBeyond(amount: Decimal, payments: readonly Payment[]): readonly Payment[] {
  let unpaid = amount;
  return payments.flatMap((payment) => {
    const left = unpaid.minus(payment.amount);
    unpaid = atLeastZero(left);
    const isBeyond = left.isNegative() && !left.isZero();
    return isBeyond ? [{ date: payment.date, amount: left.negated() }] : [];
  });
}
