import { Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { rateColumn } from "./rateColumn";

/**
 * Standard deduction.
 *
 * The amount of the filing status, plus an additional amount for each box of age 65 or older and blindness, of either spouse on a
 * joint return. A dependent has earned income plus a small amount instead, within the regular amount.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param additions - Number of boxes checked for age and blindness, 0 to 4.
 * @param earnedIfDependent - Dollars of earned income of a dependent; `undefined` for anyone else.
 * @param rules - Amounts by year.
 * @returns Dollars.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 63(c), (f)
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
  const regular = figures.amount[rateColumn(status)];
  const more = figureForStatus(figures.agedOrBlind, status).times(additions);
  if (earnedIfDependent === undefined) return regular.plus(more);
  const dependent = entryOn(rules.dependentStandardDeduction, begins).figures;
  const earned = Decimal.max(dependent.floor, earnedIfDependent.plus(dependent.earnedPlus));
  return Decimal.min(earned, regular).plus(more);
}
