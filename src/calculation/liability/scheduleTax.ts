import { ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { bracketTax } from "./bracketTax";
import { rateColumn } from "./rateColumn";

/**
 * Tax by the rate schedule.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param taxableIncome - Dollars, all at ordinary rates.
 * @param rules - Brackets by year.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 1(j)
 *
 * @example
 * scheduleTax(2025, "single", 103350) //=> 17651
 */
export function scheduleTax(
  taxYear: TaxYear,
  status: FilingStatus,
  taxableIncome: Decimal,
  rules: Pick<Rulebook, "incomeTaxRates">
): Decimal {
  const { figures } = entryOn(rules.incomeTaxRates, taxYear.firstDay);
  return bracketTax(figures.brackets[rateColumn(status)], ZERO, taxableIncome);
}
