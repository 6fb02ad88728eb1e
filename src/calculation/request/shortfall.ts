import { atLeastZero, type Decimal } from "../../money/dollars";

/**
 * Balance due on the request: total tax less payments, never below zero.
 *
 * @param totalTax - Dollars of estimated total tax, line 4.
 * @param payments - Dollars of withholding, estimates and credits, line 5; never what is sent with the request itself.
 * @returns Dollars, line 6.
 * @see Form 4868, lines 4 to 6
 *
 * @example
 * shortfall(18250, 15000) //=> 3250
 */
export function shortfall(totalTax: Decimal, payments: Decimal): Decimal {
  return atLeastZero(totalTax.minus(payments));
}
