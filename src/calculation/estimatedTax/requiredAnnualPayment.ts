import { Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/** The two years that decide the required annual payment. */
export interface RequiredAnnualPaymentInput {
  /** The year whose tax is estimated. */
  readonly taxYear: TaxYear;
  /** Filing status in that year. Married filing separately has half the threshold. */
  readonly filingStatus: FilingStatus;
  /** Dollars of that year's tax, expected or known. */
  readonly currentYearTax: Decimal;
  /** Dollars of tax on last year's return; `undefined` if none was filed or the year had less than twelve months. */
  readonly priorYearTax: Decimal | undefined;
  /** Dollars of last year's adjusted gross income. */
  readonly priorYearAgi: Decimal;
  /** At least 66⅔% of gross income, this year or last year, is from farming or fishing. */
  readonly farmerOrFisherman: boolean;
}

/**
 * Required annual payment of estimated tax: the lesser of a percent of this year's tax and a percent of last year's tax.
 *
 * 90% of this year's tax, or 100% of last year's, which is 110% if last year's adjusted gross income was above the threshold. For
 * farmers and fishermen 66⅔% of this year's tax, or 100% of last year's. Zero if last year's return showed no tax.
 *
 * @param input - Dollars and circumstances.
 * @param rules - Percents and thresholds.
 * @returns Dollars, not rounded.
 * @see 26 U.S.C. 6654(d)(1)(B), (C), (i)(1)
 *
 * @example
 * // this year 11,000, last year 10,000, income 60,000
 * //=> 9900
 */
export function requiredAnnualPayment(
  input: RequiredAnnualPaymentInput,
  rules: Pick<Rulebook, "requiredAnnualPayment">
): Decimal {
  const { taxYear, filingStatus, currentYearTax, priorYearTax, priorYearAgi, farmerOrFisherman } =
    input;
  const { figures } = entryOn(rules.requiredAnnualPayment, taxYear.lastDay);
  const ofThisYear = farmerOrFisherman
    ? currentYearTax.times(figures.farmerShareNumerator).div(figures.farmerShareDenominator)
    : currentYearTax.times(figures.currentYearShare);
  if (priorYearTax === undefined) return ofThisYear;
  const threshold = figureForStatus(figures.higherIncomeAbove, filingStatus);
  const higher = !farmerOrFisherman && priorYearAgi.greaterThan(threshold);
  const ofLastYear = priorYearTax.times(
    higher ? figures.higherPriorYearShare : figures.priorYearShare
  );
  return Decimal.min(ofThisYear, ofLastYear);
}
