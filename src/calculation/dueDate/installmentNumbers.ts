import type { FilerType } from "../filerType";

/** The number of an estimated tax installment. */
export type InstallmentNumber = 1 | 2 | 3 | 4;

/**
 * The installments of a year. A nonresident alien without wages subject to withholding has three, everyone else four.
 *
 * @param filerType - Filer type in the year.
 * @returns Their numbers in order.
 * @see 26 U.S.C. 6654(c)(1), (j)(2)
 */
export function installmentNumbers(filerType: FilerType): readonly InstallmentNumber[] {
  return filerType === "nonresident" ? [1, 2, 3] : [1, 2, 3, 4];
}
