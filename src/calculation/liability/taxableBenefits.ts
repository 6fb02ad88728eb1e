import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/**
 * Taxable Social Security benefits.
 *
 * Half of the benefits plus other income is compared with two base amounts. Above the first, up to half of the benefits is taxable;
 * above the second, up to 85%. For a separate filer both amounts are zero, unless the filer lived apart from the spouse all year.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param livedApart - Whether the filer lived apart from the spouse all year. It counts for a separate filer only.
 * @param benefits - Dollars of the year's benefits.
 * @param otherIncome - Dollars of other income less adjustments, tax-exempt interest included.
 * @param rules - Base amounts and shares.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 86, with subsection (c)(1)(C)(ii) for separate filers
 *
 * @example
 * taxableBenefits(2025, "joint", false, 30_000, 40_000) //=> 15350
 */
export function taxableBenefits(
  taxYear: TaxYear,
  status: FilingStatus,
  livedApart: boolean,
  benefits: Decimal,
  otherIncome: Decimal,
  rules: Pick<Rulebook, "socialSecurityBenefits">
): Decimal {
  const { figures } = entryOn(rules.socialSecurityBenefits, taxYear.firstDay);
  // Section 86(c)(1)(A): a separate filer who lived apart has the amounts of a single filer.
  const counted = status === "separate" && livedApart ? "single" : status;
  const base = figureForStatus(figures.baseAmount, counted);
  const adjusted = figureForStatus(figures.adjustedBaseAmount, counted);
  const provisional = otherIncome.plus(benefits.times(figures.countedShare));
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
