import type { Decimal } from "../../money/dollars";

/** Months that a penalty is charged for, and what they come to. */
export interface ShareOfMonths {
  readonly months: number;
  /** Fraction of the tax. */
  readonly share: Decimal;
}

/**
 * The share of the tax that a penalty by the month comes to, up to its maximum.
 *
 * The month in which the maximum is reached is charged in part. The division is left out where the maximum is not reached: most returns
 * are a few months late, and a client list has thousands.
 *
 * @param months - Months or parts of months.
 * @param monthlyRate - Fraction of the tax per month, more than zero.
 * @param most - Fraction of the tax that may still be charged.
 * @returns The months that are charged, and the fraction of the tax.
 * @see 26 U.S.C. 6651(a)(1), (2)
 *
 * @example
 * shareOfMonths(8, new Decimal("0.05"), new Decimal("0.25")) //=> 5 months, 0.25
 */
export function shareOfMonths(months: number, monthlyRate: Decimal, most: Decimal): ShareOfMonths {
  const share = monthlyRate.times(months);
  if (share.lessThanOrEqualTo(most)) return { months, share };
  return { months: most.div(monthlyRate).ceil().toNumber(), share: most };
}
