import { Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { rateColumn } from "./rateColumn";

/**
 * Standard deduction.
 *
 * The amount of the status, and for each of being 65 or older and being blind, of either spouse on a joint return, an addition: the
 * smaller one for the married and for a surviving spouse. Somebody's dependent has earned income and a little more, within the
 * regular amount.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param additions - How many of the additions apply: 0 to 4.
 * @param earnedIfDependent - Dollars of earned income of somebody's dependent; `undefined` for anyone else.
 * @param rules - Amounts by year.
 * @returns Dollars.
 * @throws NotInTableError for a year whose amounts are not held.
 * @see 26 U.S.C. 63(c), (f)
 *
 * @example
 * standardDeduction(2025, "joint", 2, undefined) //=> 34700
 */
export function standardDeduction(
  taxYear: TaxYear,
  status: FilingStatus,
  additions: number,
  earnedIfDependent: Decimal | undefined,
  rules: Pick<Rulebook, "standardDeduction" | "dependentStandardDeduction">
): Decimal {
  const begins = taxYear.firstDay;
  const { figures } = entryOn(rules.standardDeduction, begins);
  const regular = figures[rateColumn(status)];
  const unmarried = status === "single" || status === "head";
  const addition = unmarried ? figures.agedOrBlindUnmarried : figures.agedOrBlindMarried;
  const more = addition.times(additions);
  if (earnedIfDependent === undefined) return regular.plus(more);
  const dependent = entryOn(rules.dependentStandardDeduction, begins).figures;
  const earned = Decimal.max(dependent.floor, earnedIfDependent.plus(dependent.earnedPlus));
  return Decimal.min(earned, regular).plus(more);
}
