import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/** One business and the return that includes it. */
export interface BusinessIncomeInput {
  readonly taxYear: TaxYear;
  readonly status: FilingStatus;
  /** Dollars of qualified business income: profit less the deductible part of self-employment tax and similar items. */
  readonly qualifiedIncome: Decimal;
  /** Dollars of taxable income before this deduction. */
  readonly taxableIncome: Decimal;
  /** Dollars of net capital gain and qualified dividends in it. */
  readonly preferentialIncome: Decimal;
  /** Dollars of W-2 wages that the business paid. */
  readonly wages: Decimal;
  /** Dollars of unadjusted basis immediately after acquisition (UBIA) of its qualified property. */
  readonly property: Decimal;
  /** A specified service trade or business (SSTB), such as health, law or accounting. */
  readonly specifiedService: boolean;
}

/**
 * Deduction for qualified business income of one business.
 *
 * 20% of qualified business income, but not more than 20% of taxable income without net capital gain. Above the threshold the limit
 * by wages and property applies, and a specified service trade or business loses the deduction, both phased in over a range of
 * income. From 2026 an active business has a small minimum deduction.
 *
 * @param input - Dollars and circumstances.
 * @param rules - Thresholds, shares and phase-in ranges by year.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 199A(a), (b), (d)(3), (i); Regulations section 1.199A-1
 */
export function businessIncomeDeduction(
  input: BusinessIncomeInput,
  rules: Pick<Rulebook, "businessIncomeDeduction">
): Decimal {
  const { taxYear, status, taxableIncome, preferentialIncome, specifiedService } = input;
  const { figures } = entryOn(rules.businessIncomeDeduction, taxYear.firstDay);
  const above = atLeastZero(taxableIncome.minus(figureForStatus(figures.threshold, status)));
  const phasedIn = Decimal.min(1, above.div(figureForStatus(figures.phaseInRange, status)));
  const counted = specifiedService ? new Decimal(1).minus(phasedIn) : new Decimal(1);
  const income = atLeastZero(input.qualifiedIncome).times(counted);
  const wages = input.wages.times(counted);
  const property = input.property.times(counted);

  const full = income.times(figures.rate);
  const limit = Decimal.max(
    wages.times(figures.wageShare),
    wages.times(figures.wageShareWithUbia).plus(property.times(figures.ubiaShare))
  );
  const ofBusiness = full.minus(atLeastZero(full.minus(limit)).times(phasedIn));
  const ofIncome = atLeastZero(taxableIncome.minus(preferentialIncome)).times(figures.rate);
  const deduction = Decimal.min(ofBusiness, ofIncome);
  const active = income.greaterThanOrEqualTo(figures.minimumFrom);
  return active && figures.minimum.greaterThan(0)
    ? Decimal.max(deduction, figures.minimum)
    : deduction;
}
