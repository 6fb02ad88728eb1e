import type { Decimal } from "../../money/dollars";

/** Penalties and interest of one return in dollars and cents, part by part. */
export interface ChargedParts {
  readonly failureToFile: Decimal;
  readonly failureToPay: Decimal;
  /** Interest on the two penalties. Before notice it accrues on the failure-to-file penalty alone. */
  readonly interestOnPenalties: Decimal;
  readonly interestOnTax: Decimal;
}

/** What relief for a clean history would remove and leave, in dollars and cents. */
export interface LikelyRelief {
  /** Both penalties and the interest on them. */
  readonly removed: Decimal;
  /** The interest on the tax. */
  readonly remaining: Decimal;
}

/**
 * What relief for a clean history would remove of the penalties and interest of one return.
 *
 * The relief covers both penalties of the return, with the minimum penalty and every month to date. Interest on a penalty goes with
 * the penalty. Interest on the tax stays, and so does the estimated tax penalty, which is not among these parts. The failure-to-pay
 * penalty continues until the tax is paid: relief that is given earlier leaves the months after it.
 *
 * @param charged - The penalties and interest, each part rounded to cents.
 * @returns Dollars and cents. What is removed and what remains add up to the total of the penalties and interest.
 * @see IRM 20.1.1.3.3.2.1(1); 26 U.S.C. 6601(e)(2)
 *
 * @example
 * // penalties of 900 and 100, interest of 8.32 on the penalties and 92.47 on the tax: 1,008.32 removed, 92.47 remaining
 */
export function likelyRelief(charged: ChargedParts): LikelyRelief {
  const { failureToFile, failureToPay, interestOnPenalties, interestOnTax } = charged;
  return {
    removed: failureToFile.plus(failureToPay).plus(interestOnPenalties),
    remaining: interestOnTax,
  };
}
