import { Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/** The years that the required annual payment rests on. */
export interface RequiredAnnualPaymentInput {
  /** The year whose tax is estimated. */
  readonly taxYear: TaxYear;
  /** Status in that year: a separate filer's threshold is half. */
  readonly status: FilingStatus;
  /** Dollars of that year's tax, expected or known. */
  readonly currentYearTax: Decimal;
  /** Dollars of tax on last year's return; `undefined` where none was filed or the year had fewer than twelve months. */
  readonly priorYearTax: Decimal | undefined;
  /** Dollars of last year's adjusted gross income. */
  readonly priorAdjustedGrossIncome: Decimal;
  /** Two thirds of gross income, this year or last, from farming or fishing. */
  readonly farmerOrFisherman: boolean;
}

/**
 * Required annual payment of estimated tax: the lesser of a share of this year's tax and a share of last year's.
 *
 * 90% of this year's, or 100% of last year's, 110% where last year's adjusted gross income was above the threshold. Farmers and
 * fishers: two thirds of this year's, or 100% of last year's. No tax on last year's return means nothing is required.
 *
 * @param input - Dollars and circumstances.
 * @param rules - Shares and thresholds.
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
  const {
    taxYear,
    status,
    currentYearTax,
    priorYearTax,
    priorAdjustedGrossIncome,
    farmerOrFisherman,
  } = input;
  const { figures } = entryOn(rules.requiredAnnualPayment, taxYear.lastDay);
  const ofThisYear = farmerOrFisherman
    ? currentYearTax.times(figures.farmerShareNumerator).div(figures.farmerShareDenominator)
    : currentYearTax.times(figures.currentYearShare);
  if (priorYearTax === undefined) return ofThisYear;
  const threshold = figureForStatus(figures.higherIncomeAbove, status);
  const higher = !farmerOrFisherman && priorAdjustedGrossIncome.greaterThan(threshold);
  const ofLastYear = priorYearTax.times(
    higher ? figures.higherPriorYearShare : figures.priorYearShare
  );
  return Decimal.min(ofThisYear, ofLastYear);
}
