import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/** One business, and the return it is on. */
export interface BusinessIncomeInput {
  readonly taxYear: TaxYear;
  readonly status: FilingStatus;
  /** Dollars of qualified business income: profit less half the self-employment tax and the like. */
  readonly qualifiedIncome: Decimal;
  /** Dollars of taxable income before this deduction. */
  readonly taxableIncome: Decimal;
  /** Dollars of net capital gain and qualified dividends in it. */
  readonly preferentialIncome: Decimal;
  /** Dollars of wages that the business paid. */
  readonly wages: Decimal;
  /** Dollars of its depreciable property, unadjusted. */
  readonly property: Decimal;
  /** A specified service business: health, law, accounting and the like. */
  readonly specifiedService: boolean;
}

const HALF_OF_WAGES = new Decimal("0.5");
const QUARTER_OF_WAGES = new Decimal("0.25");
const SHARE_OF_PROPERTY = new Decimal("0.025");

/**
 * Deduction for qualified business income of one business.
 *
 * 20% of it, not above 20% of taxable income without gains. Above the threshold the limit by wages and property comes in, and a
 * specified service business loses its share, both over the width of the phase-in. From 2026 a small minimum.
 *
 * @param input - Dollars and circumstances.
 * @param rules - Thresholds and widths by year.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a year whose figures are not held.
 * @see 26 U.S.C. 199A(a), (b), (d)(3), (i); 26 CFR 1.199A-1
 */
export function businessIncomeDeduction(
  input: BusinessIncomeInput,
  rules: Pick<Rulebook, "businessIncomeDeduction">
): Decimal {
  const { taxYear, status, taxableIncome, preferentialIncome, specifiedService } = input;
  const { figures } = entryOn(rules.businessIncomeDeduction, taxYear.firstDay);
  const threshold = {
    joint: figures.thresholdJoint,
    separate: figures.thresholdSeparate,
    single: figures.threshold,
    head: figures.threshold,
    survivor: figures.threshold,
  }[status];
  const width = status === "joint" ? figures.phaseInJoint : figures.phaseIn;
  const phasedIn = Decimal.min(1, atLeastZero(taxableIncome.minus(threshold)).div(width));
  const counted = specifiedService ? new Decimal(1).minus(phasedIn) : new Decimal(1);
  const income = atLeastZero(input.qualifiedIncome).times(counted);
  const wages = input.wages.times(counted);
  const property = input.property.times(counted);

  const full = income.times(figures.rate);
  const limit = Decimal.max(
    wages.times(HALF_OF_WAGES),
    wages.times(QUARTER_OF_WAGES).plus(property.times(SHARE_OF_PROPERTY))
  );
  const ofBusiness = full.minus(atLeastZero(full.minus(limit)).times(phasedIn));
  const ofIncome = atLeastZero(taxableIncome.minus(preferentialIncome)).times(figures.rate);
  const deduction = Decimal.min(ofBusiness, ofIncome);
  const active = income.greaterThanOrEqualTo(figures.minimumFrom);
  return active && figures.minimum.greaterThan(0)
    ? Decimal.max(deduction, figures.minimum)
    : deduction;
}
