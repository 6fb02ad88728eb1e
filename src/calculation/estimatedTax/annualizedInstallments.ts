import { atLeastZero, Decimal, ZERO } from "../../money/dollars";

/** A required installment by the annualized income installment method, with its calculation. Dollars. */
export interface AnnualizedInstallment {
  /** The required installments before this one. */
  readonly earlier: Decimal;
  /** The annualized income installment. */
  readonly annualized: Decimal;
  /** The installment by equal parts of the required annual payment. */
  readonly regular: Decimal;
  /** Reductions of earlier installments that are not recaptured yet. */
  readonly saved: Decimal;
  readonly regularAndSaved: Decimal;
  readonly required: Decimal;
}

/**
 * Required installments by the annualized income installment method.
 *
 * Each is the smaller of the annualized income installment and the regular installment, which is increased by what smaller installments
 * before it have saved. Together they can be less than the required annual payment, and never more.
 *
 * @param dueThrough - Dollars of annualized tax due through each installment, in order.
 * @param regular - Dollars of each regular installment, in the same order.
 * @returns The installments in order. Dollars, not rounded.
 * @see 26 U.S.C. 6654(d)(2)(A), (B); Form 2210, Schedule AI, lines 22 to 27
 *
 * @example
 * // due through 409, 2,212, 3,667, 5,881; regular 1,529 each
 * //=> required 409, 1,803, 1,455, 2,214
 */
export function annualizedInstallments(
  dueThrough: readonly Decimal[],
  regular: readonly Decimal[]
): readonly AnnualizedInstallment[] {
  let earlier = ZERO;
  let saved = ZERO;
  return dueThrough.map((due, index) => {
    const annualized = atLeastZero(due.minus(earlier));
    const part = regular[index] ?? ZERO;
    const regularAndSaved = part.plus(saved);
    const required = Decimal.min(annualized, regularAndSaved);
    const installment = { earlier, annualized, regular: part, saved, regularAndSaved, required };
    earlier = earlier.plus(required);
    saved = regularAndSaved.minus(required);
    return installment;
  });
}
