import { toCents, type Decimal } from "../../money/dollars";
import type { Charges } from "./charges";

/**
 * The part of the penalties and interest that paying late causes: the failure-to-pay penalty and the interest on the tax.
 *
 * The failure-to-file penalty and the interest on it are left out, because filing late causes them whenever the tax is paid.
 *
 * @param charged - The penalties and interest.
 * @returns Dollars and cents: the two parts, each rounded once.
 * @see 26 U.S.C. 6601(a), 6651(a)(1), (2)
 */
export function costOfPayingLate({
  failureToPay,
  interestOnTax,
}: Pick<Charges, "failureToPay" | "interestOnTax">): Decimal {
  return toCents(failureToPay.amount).plus(toCents(interestOnTax.amount));
}
