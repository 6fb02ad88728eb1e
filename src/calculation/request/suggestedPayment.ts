import { atLeastZero, upToCents, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";

/** How much of the total tax to pay by the regular due date: all, enough for the 90% test, or a fraction of it. */
export type PaymentTarget = "full" | "reasonable cause" | Decimal;

/** What the payment should cover. */
export interface SuggestedPaymentInput {
  readonly totalTax: Decimal;
  readonly payments: Decimal;
  readonly target: PaymentTarget;
  /** Extra amount in case the estimate is low: a fraction of total tax if below 1, otherwise dollars. */
  readonly cushion?: Decimal | undefined;
  /** Dollars of the first estimated tax installment of the new year, due on the same date. */
  readonly firstInstallment?: Decimal | undefined;
}

/**
 * Suggested payment with the request.
 *
 * The target share of the tax, plus the cushion and the new year's first installment, less total payments. An expected overpayment
 * reduces the installment, as if applied on the return (Rev. Rul. 99-40). Rounded up to the cent, because a payment half a cent
 * below 90% fails the test. A payment with the request is applied to the old year first, so for any target except `full` the
 * installment should be paid separately.
 *
 * @param input - Dollars and the target.
 * @param rules - The share of the tax for the 90% test.
 * @returns Dollars and cents, never below zero.
 * @see 26 CFR 301.6651-1(c)(3)
 *
 * @example
 * // tax 20,000, payments 15,000: full 5,000; reasonable cause 3,000; full with a cushion of 0.05 and 2,500 first installment 8,500
 */
export function suggestedPayment(
  input: SuggestedPaymentInput,
  rules: Pick<Rulebook, "reasonableCauseTest">
): Decimal {
  const { totalTax, payments, target, cushion = ZERO, firstInstallment = ZERO } = input;
  const table = rules.reasonableCauseTest;
  const share =
    target === "full"
      ? 1
      : target === "reasonable cause"
        ? entryOn(table, table.knownThrough).figures.shareToPay
        : target;
  const extra = cushion.lessThan(1) ? totalTax.times(cushion) : cushion;
  const wanted = totalTax.times(share).plus(extra).plus(firstInstallment);
  return upToCents(atLeastZero(wanted.minus(payments)));
}
