import { atLeastZero, upToCents, ZERO, type Decimal } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import type { FilerType } from "../filerType";
import { requiredAnnualPayment, type RequiredAnnualPaymentInput } from "./requiredAnnualPayment";
import { requiredInstallments } from "./requiredInstallments";
import { smallBalanceException } from "./smallBalanceException";

/** The new year, and payments already expected for it. */
export interface FirstInstallmentInput extends RequiredAnnualPaymentInput {
  /** Filer type in the new year. */
  readonly filerType?: FilerType | undefined;
  /** Dollars expected to be withheld in the year. */
  readonly withholding: Decimal;
  /** Dollars of last year's overpayment applied to the year. */
  readonly overpaymentApplied: Decimal;
}

/**
 * First estimated tax installment of a year, due on the deadline to request the extension for the year before.
 *
 * A quarter of the required annual payment, less a quarter of the withholding and the overpayment applied from the prior year. For a
 * nonresident alien without wages subject to withholding, whose first of three installments is due in June, half of the required
 * annual payment, less a third of the withholding. Zero if less than $1,000 remains after withholding, or for farmers and fishermen,
 * whose only installment is due in January.
 *
 * @param input - Dollars and circumstances.
 * @param rules - Percents and thresholds.
 * @returns Dollars and cents, rounded up to the cent.
 * @see 26 U.S.C. 6654(c)(1), (d)(1)(A), (e)(1), (g)(1), (i)(1), (j)
 *
 * @example
 * // expected tax 24,000, last year 20,000 on income 120,000, withholding 8,000
 * //=> 3000
 */
export function firstInstallment(
  input: FirstInstallmentInput,
  rules: Pick<Rulebook, "requiredAnnualPayment">
): Decimal {
  const { taxYear, filerType = "resident", currentYearTax, farmerOrFisherman } = input;
  const { withholding, overpaymentApplied } = input;
  if (farmerOrFisherman || smallBalanceException(taxYear, currentYearTax, withholding, rules))
    return ZERO;
  const installments = requiredInstallments(taxYear, filerType, farmerOrFisherman, rules);
  const share = installments[0]?.share ?? ZERO;
  const installment = requiredAnnualPayment(input, rules).times(share);
  const withheld = withholding.div(installments.length);
  return upToCents(atLeastZero(installment.minus(withheld).minus(overpaymentApplied)));
}
