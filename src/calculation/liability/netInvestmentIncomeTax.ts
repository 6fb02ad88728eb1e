import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/**
 * Net investment income tax, on net investment income or on income above the threshold, whichever is less.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param netInvestmentIncome - Dollars.
 * @param adjustedGrossIncome - Dollars, with excluded foreign income added back.
 * @param rules - Rate and thresholds.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 1411(a)(1), (b); Form 8960
 *
 * @example
 * netInvestmentIncomeTax(2025, "joint", 40_000, 270_000) //=> 760
 */
export function netInvestmentIncomeTax(
  taxYear: TaxYear,
  status: FilingStatus,
  netInvestmentIncome: Decimal,
  adjustedGrossIncome: Decimal,
  rules: Pick<Rulebook, "netInvestmentIncomeTax">
): Decimal {
  const { figures } = entryOn(rules.netInvestmentIncomeTax, taxYear.firstDay);
  const threshold = figureForStatus(figures.threshold, status);
  const above = atLeastZero(adjustedGrossIncome.minus(threshold));
  return Decimal.min(atLeastZero(netInvestmentIncome), above).times(figures.rate);
}
