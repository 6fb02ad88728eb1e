import { atLeastZero, upToCents, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";

/** How much of the total tax is to be paid by the regular due date: all of it, enough for the presumption, or a fraction. */
export type PaymentTarget = "full" | "reasonable cause" | Decimal;

/** What the payment is to cover. */
export interface SuggestedPaymentInput {
  readonly totalTax: Decimal;
  readonly payments: Decimal;
  readonly target: PaymentTarget;
  /** Against an estimate that proves low: a fraction of total tax below 1, or dollars. */
  readonly cushion?: Decimal | undefined;
  /** First estimate of the new year, due the same day. */
  readonly firstInstallment?: Decimal | undefined;
}

/**
 * What to pay with the request.
 *
 * The aimed share of the tax, the cushion and the new year's first estimate, less what is paid already: an expected overpayment
 * pays toward the estimate first, as it would when applied on the return (Rev. Rul. 99-40). Rounded up to the cent, because a
 * payment half a cent short of 90% is short. What is sent with the request pays the old year first, so with any aim but `full` the
 * new year's estimate belongs in a payment of its own.
 *
 * @param input - Dollars and the aim.
 * @param rules - The share that the presumption asks for.
 * @returns Dollars and cents, never below zero.
 * @see 26 CFR 301.6651-1(c)(3)
 *
 * @example
 * // tax 20,000, payments 15,000: full 5,000; protect 3,000; full with a cushion of 0.05 and 2,500 first estimate 8,500
 */
export function suggestedPayment(
  input: SuggestedPaymentInput,
  rules: Pick<Rulebook, "reasonableCauseTest">
): Decimal {
  const { totalTax, payments, target, cushion = ZERO, firstInstallment = ZERO } = input;
  const presumption = rules.reasonableCauseTest;
  const share =
    target === "full"
      ? 1
      : target === "reasonable cause"
        ? entryOn(presumption, presumption.knownThrough).figures.shareToPay
        : target;
  const extra = cushion.lessThan(1) ? totalTax.times(cushion) : cushion;
  const wanted = totalTax.times(share).plus(extra).plus(firstInstallment);
  return upToCents(atLeastZero(wanted.minus(payments)));
}
