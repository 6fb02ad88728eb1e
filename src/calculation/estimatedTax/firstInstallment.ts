import { atLeastZero, upToCents, ZERO, type Decimal } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import { requiredAnnualPayment, type RequiredAnnualPaymentInput } from "./requiredAnnualPayment";
import { entryOn } from "../../rules/datedTable";
import { smallBalanceException } from "./smallBalanceException";

/** The new year, and payments already expected for it. */
export interface FirstInstallmentInput extends RequiredAnnualPaymentInput {
  /** Dollars expected to be withheld in the year. */
  readonly withholding: Decimal;
  /** Dollars of last year's overpayment applied to the year. */
  readonly overpaymentApplied: Decimal;
}

/**
 * First estimated tax installment of a year, due on the deadline to request the extension for the year before.
 *
 * A quarter of the required annual payment, less a quarter of the withholding and the overpayment applied from the prior year. Zero
 * if less than $1,000 remains after withholding, if withholding covers the required payment, or for farmers and fishermen, whose
 * only installment is due in January.
 *
 * @param input - Dollars and circumstances.
 * @param rules - Percents and thresholds.
 * @returns Dollars and cents, rounded up to the cent.
 * @see 26 U.S.C. 6654(c)(1), (d)(1)(A), (e)(1), (g)(1), (i)(1)
 *
 * @example
 * // expected tax 24,000, last year 20,000 on income 120,000, withholding 8,000
 * //=> 3000
 */
export function firstInstallment(
  input: FirstInstallmentInput,
  rules: Pick<Rulebook, "requiredAnnualPayment">
): Decimal {
  const { taxYear, currentYearTax, farmerOrFisherman, withholding, overpaymentApplied } = input;
  if (farmerOrFisherman || smallBalanceException(taxYear, currentYearTax, withholding, rules))
    return ZERO;
  const { installmentShare } = entryOn(rules.requiredAnnualPayment, taxYear.lastDay).figures;
  const required = requiredAnnualPayment(input, rules);
  const installment = atLeastZero(required.minus(withholding)).times(installmentShare);
  return upToCents(atLeastZero(installment.minus(overpaymentApplied)));
}
