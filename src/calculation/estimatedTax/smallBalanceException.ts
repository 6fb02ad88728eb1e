import type { Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { TaxYear } from "../taxYear";

/**
 * Whether there is no estimated tax penalty because less than $1,000 of the tax remains after withholding.
 *
 * @param taxYear - The year whose tax is estimated.
 * @param currentYearTax - Dollars of tax for that year.
 * @param withholding - Dollars withheld in that year.
 * @param rules - The least tax that needs installments.
 * @returns Whether the exception applies; at exactly $1,000 it does not.
 * @throws NotInTableError for a tax year that the table does not cover.
 * @see 26 U.S.C. 6654(e)(1)
 *
 * @example
 * // tax 9,000, withholding 8,000.01 //=> true
 */
export function smallBalanceException(
  taxYear: TaxYear,
  currentYearTax: Decimal,
  withholding: Decimal,
  rules: Pick<Rulebook, "requiredAnnualPayment">
): boolean {
  const { leastTaxDue } = entryOn(rules.requiredAnnualPayment, taxYear.lastDay).figures;
  return currentYearTax.minus(withholding).lessThan(leastTaxDue);
}
