import { atLeastZero, Decimal, ZERO } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

const HALF = new Decimal("0.5");

/**
 * Social Security benefits in gross income.
 *
 * Up to half of them above one base, up to 85% above another, by other income and half of the benefits. A separate filer is taken to
 * have lived with the spouse, so that both bases are zero.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param benefits - Dollars of benefits of the year.
 * @param otherIncome - Dollars of other income less adjustments, tax-exempt interest included.
 * @param rules - Bases and shares.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a year before 2022.
 * @see 26 U.S.C. 86
 *
 * @example
 * taxableBenefits(2025, "joint", 30_000, 40_000) //=> 15350
 */
export function taxableBenefits(
  taxYear: TaxYear,
  status: FilingStatus,
  benefits: Decimal,
  otherIncome: Decimal,
  rules: Pick<Rulebook, "socialSecurityBenefits">
): Decimal {
  const { figures } = entryOn(rules.socialSecurityBenefits, taxYear.firstDay);
  const [base, adjusted] =
    status === "separate"
      ? [ZERO, ZERO]
      : status === "joint"
        ? [figures.baseJoint, figures.adjustedBaseJoint]
        : [figures.base, figures.adjustedBase];
  const provisional = otherIncome.plus(benefits.times(HALF));
  const lower = Decimal.min(benefits, atLeastZero(provisional.minus(base))).times(
    figures.lowerShare
  );
  const above = atLeastZero(provisional.minus(adjusted));
  if (!above.greaterThan(0)) return lower;
  const carried = Decimal.min(lower, adjusted.minus(base).times(figures.lowerShare));
  return Decimal.min(
    benefits.times(figures.higherShare),
    above.times(figures.higherShare).plus(carried)
  );
}
