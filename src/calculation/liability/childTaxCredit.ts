import { atLeastZero, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/**
 * Credit for children under 17 and other dependents, before it is held to the tax.
 *
 * The refundable part is a payment, not a reduction of total tax, and is not worked out here.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param children - Qualifying children under 17.
 * @param otherDependents - Other dependents.
 * @param adjustedGrossIncome - Dollars.
 * @param rules - Amounts by year, and how the credit shrinks.
 * @returns Dollars.
 * @throws NotInTableError for a year whose amounts are not held.
 * @see 26 U.S.C. 24(a), (b), (h)
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
  const threshold = status === "joint" ? figures.phaseoutJoint : figures.phaseoutOthers;
  const steps = atLeastZero(adjustedGrossIncome.minus(threshold)).div(figures.phaseoutStep).ceil();
  return atLeastZero(full.minus(steps.times(figures.phaseoutPerStep)));
}
