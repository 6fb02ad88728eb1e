import { ZERO, type Decimal } from "../../money/dollars";
import { item, type ReturnItem, type ReturnItems } from "./returnItems";

const PAYMENTS: readonly ReturnItem[] = [
  "withholding",
  "estimatedPayments",
  "overpaymentApplied",
  "refundableCredits",
];

/**
 * Total payments for line 5 of the request: withholding, estimated tax payments, last year's overpayment applied and refundable
 * credits. The amount paid with the request is not included: it is line 7.
 *
 * @param items - Known items, dollars.
 * @returns Dollars, not rounded.
 * @see Form 4868, line 5
 */
export function totalPayments(items: ReturnItems): Decimal {
  return PAYMENTS.reduce((sum, name) => sum.plus(item(items, name)), ZERO);
}
