import { atLeastZero, upToCents, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { requiredAnnualPayment, type RequiredAnnualPaymentInput } from "./requiredAnnualPayment";

/** The new year, and what is paid toward it already. */
export interface FirstInstallmentInput extends RequiredAnnualPaymentInput {
  /** Dollars expected to be withheld in the year. */
  readonly withholding: Decimal;
  /** Dollars of last year's overpayment applied to the year. */
  readonly overpaymentApplied: Decimal;
}

/**
 * First estimate of a year's tax, due on the day the extension of the year before is asked for.
 *
 * A quarter of the required annual payment, less a quarter of the withholding and the overpayment applied. Nothing where the tax
 * after withholding stays below $1,000 or withholding covers the whole, and nothing in April for farmers and fishers, whose one
 * installment falls in January.
 *
 * @param input - Dollars and circumstances.
 * @param rules - Shares and thresholds.
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
  const { figures } = entryOn(rules.requiredAnnualPayment, taxYear.lastDay);
  const { leastTaxDue, installmentShare } = figures;
  if (farmerOrFisherman || currentYearTax.minus(withholding).lessThan(leastTaxDue)) return ZERO;
  const required = requiredAnnualPayment(input, rules);
  const quarter = atLeastZero(required.minus(withholding)).times(installmentShare);
  return upToCents(atLeastZero(quarter.minus(overpaymentApplied)));
}
