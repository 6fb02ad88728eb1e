import { toCents, type Decimal } from "../../money/dollars";
import type { Charges } from "./charges";

/** Dollars and cents that relief for a clean history would remove, part by part. */
export interface LikelyRelief {
  readonly failureToFile: Decimal;
  readonly failureToPay: Decimal;
  /** Interest on the failure-to-file penalty. */
  readonly interestOnPenalty: Decimal;
  /** The three parts together. */
  readonly removed: Decimal;
  /** Penalties and interest without them: the interest on the tax. */
  readonly remaining: Decimal;
}

/**
 * What relief for a clean history would remove of the penalties and interest of one return.
 *
 * The relief covers both penalties of the return, with the minimum penalty and every month to date. Interest on the
 * failure-to-file penalty goes with the penalty. Interest on the tax stays, and so does the estimated tax penalty, which is not
 * among the penalties and interest here. The failure-to-pay penalty continues until the tax is paid: relief that is given earlier
 * leaves the months after it.
 *
 * @param charged - The penalties and interest.
 * @returns Dollars and cents. What is removed and what remains add up to the total of the penalties and interest.
 * @see IRM 20.1.1.3.3.2.1(1); 26 U.S.C. 6601(e)(2)
 */
export function likelyRelief(
  charged: Pick<Charges, "failureToFile" | "failureToPay" | "interestOnPenalty" | "total">
): LikelyRelief {
  const failureToFile = toCents(charged.failureToFile.amount);
  const failureToPay = toCents(charged.failureToPay.amount);
  const interestOnPenalty = toCents(charged.interestOnPenalty.amount);
  const removed = failureToFile.plus(failureToPay).plus(interestOnPenalty);
  return {
    failureToFile,
    failureToPay,
    interestOnPenalty,
    removed,
    remaining: charged.total.minus(removed),
  };
}
