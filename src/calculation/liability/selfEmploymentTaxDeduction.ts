import { toWholeDollars, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { TaxYear } from "../taxYear";

/**
 * The part of self-employment tax that is deducted from income: half.
 *
 * @param taxYear - The year of the return.
 * @param tax - Dollars of self-employment tax.
 * @param rules - The deductible share.
 * @returns Whole dollars.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 164(f)(1)
 *
 * @example
 * selfEmploymentTaxDeduction(2025, 14_129) //=> 7065
 */
export function selfEmploymentTaxDeduction(
  taxYear: TaxYear,
  tax: Decimal,
  rules: Pick<Rulebook, "selfEmploymentTax">
): Decimal {
  const { deductibleShare } = entryOn(rules.selfEmploymentTax, taxYear.firstDay).figures;
  return toWholeDollars(tax.times(deductibleShare));
}
