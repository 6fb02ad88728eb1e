import { atLeastZero, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/**
 * Child tax credit and credit for other dependents, before the limit by tax.
 *
 * The refundable part is a payment, not a reduction of total tax. It is not calculated here.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param children - Qualifying children under 17.
 * @param otherDependents - Other dependents.
 * @param adjustedGrossIncome - Dollars.
 * @param rules - Amounts and phaseout by year.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 24(a), (b), (h)
 *
 * @example
 * childTaxCredit(2025, "joint", 2, 0, 410_001) //=> 3850
 */
export function childTaxCredit(
  taxYear: TaxYear,
  status: FilingStatus,
  children: number,
  otherDependents: number,
  adjustedGrossIncome: Decimal,
  rules: Pick<Rulebook, "childTaxCredit">
): Decimal {
  const { figures } = entryOn(rules.childTaxCredit, taxYear.firstDay);
  const full = figures.child.times(children).plus(figures.otherDependent.times(otherDependents));
  const threshold = figureForStatus(figures.phaseoutAbove, status);
  const steps = atLeastZero(adjustedGrossIncome.minus(threshold)).div(figures.phaseoutStep).ceil();
  return atLeastZero(full.minus(steps.times(figures.phaseoutPerStep)));
}
