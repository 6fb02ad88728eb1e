import { atLeastZero, type Decimal } from "../../money/dollars";

/**
 * Balance due on the request: estimated total tax less total payments, never below zero.
 *
 * @param totalTax - Dollars of estimated total tax, line 4.
 * @param payments - Dollars of withholding, estimated tax payments and credits, line 5; not the amount paid with the request.
 * @returns Dollars, line 6.
 * @see Form 4868, lines 4 to 6
 *
 * @example
 * shortfall(18250, 15000) //=> 3250
 */
export function shortfall(totalTax: Decimal, payments: Decimal): Decimal {
  return atLeastZero(totalTax.minus(payments));
}
