import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/**
 * Net investment income tax, on the lesser of net investment income and income above the threshold.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status; a surviving spouse takes the joint threshold, a head of household the single one.
 * @param netInvestmentIncome - Dollars.
 * @param adjustedGrossIncome - Dollars, with excluded foreign income added back.
 * @param rules - Rate and thresholds.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a year before 2022.
 * @see 26 U.S.C. 1411(a)(1), (b); Form 8960
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
  const threshold = {
    single: figures.single,
    head: figures.single,
    joint: figures.joint,
    survivor: figures.joint,
    separate: figures.separate,
  }[status];
  const above = atLeastZero(adjustedGrossIncome.minus(threshold));
  return Decimal.min(atLeastZero(netInvestmentIncome), above).times(figures.rate);
}
