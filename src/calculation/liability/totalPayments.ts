import { ZERO, type Decimal } from "../../money/dollars";
import { item, type ReturnItem, type ReturnItems } from "./returnItems";

const PAYMENTS: readonly ReturnItem[] = [
  "withholding",
  "estimatedPayments",
  "overpaymentApplied",
  "refundableCredits",
];

/**
 * Payments for line 5 of the request: withholding, estimates, last year's overpayment applied, refundable credits. Never what is
 * sent with the request itself, which is line 7.
 *
 * @param items - What is known, dollars.
 * @returns Dollars, not rounded.
 * @see Form 4868, line 5
 */
export function totalPayments(items: ReturnItems): Decimal {
  return PAYMENTS.reduce((sum, name) => sum.plus(item(items, name)), ZERO);
}
