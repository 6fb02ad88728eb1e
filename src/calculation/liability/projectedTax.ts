import { atLeastZero, toWholeDollars, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import { yearBefore, type TaxYear } from "../taxYear";
import { incomeTax } from "./incomeTax";
import { rateColumn } from "./rateColumn";
import { selfEmploymentTax } from "./selfEmploymentTax";

/** Last year's return in two figures, and what is different this year; falls are negative. */
export interface ProjectedTaxInput {
  /** The year to project. */
  readonly taxYear: TaxYear;
  readonly status: FilingStatus;
  /** Dollars of total tax on last year's return. */
  readonly priorYearTax: Decimal;
  /** Dollars of taxable income on last year's return. */
  readonly priorYearTaxableIncome: Decimal;
  /** Dollars of ordinary income more than last year: wages, interest, pensions. */
  readonly ordinary: Decimal;
  /** Dollars of business profit more than last year, above wages in neither year. */
  readonly businessProfit: Decimal;
  /** Dollars of long-term gain and qualified dividends more than last year. */
  readonly gain: Decimal;
  /** Dollars of deductions more than last year. */
  readonly deductions: Decimal;
  /** Children under 17 more than last year. */
  readonly children: number;
}

/**
 * Total tax projected from last year's: a documented basis for line 4 when nothing better is there.
 *
 * Last year's total tax, plus the difference between this year's tax on the changed income and last year's tax on last year's
 * income, each by its own year's rates, the rise of the standard deduction counted; plus self-employment tax on more profit,
 * less the credit for more children. Last year's income is taken at ordinary rates on both sides, so that only changes matter.
 *
 * @param input - Dollars.
 * @param rules - Rates, standard deduction, self-employment tax, credit of both years.
 * @returns Whole dollars, never below zero.
 * @throws NotInTableError where either year's figures are not held.
 */
export function projectedTax(
  input: ProjectedTaxInput,
  rules: Pick<
    Rulebook,
    | "incomeTaxRates"
    | "taxTable"
    | "capitalGainRates"
    | "standardDeduction"
    | "selfEmploymentTax"
    | "childTaxCredit"
  >
): Decimal {
  const { taxYear, status, priorYearTaxableIncome, businessProfit, gain } = input;
  const before = yearBefore(taxYear);
  const column = rateColumn(status);
  const standard = (year: TaxYear): Decimal =>
    entryOn(rules.standardDeduction, year.firstDay).figures.amount[column];
  const employment = businessProfit.isNegative()
    ? selfEmploymentTax(taxYear, businessProfit.negated(), ZERO, rules).negated()
    : selfEmploymentTax(taxYear, businessProfit, ZERO, rules);
  const preferentialIncome = atLeastZero(gain);
  const income = atLeastZero(
    priorYearTaxableIncome
      .plus(input.ordinary)
      .plus(businessProfit)
      .minus(employment.div(2))
      .plus(gain)
      .minus(input.deductions)
      .minus(standard(taxYear).minus(standard(before)))
  );
  const now = incomeTax(taxYear, status, income, preferentialIncome, rules);
  const then = incomeTax(before, status, priorYearTaxableIncome, ZERO, rules);
  const { child } = entryOn(rules.childTaxCredit, taxYear.firstDay).figures;
  const projected = input.priorYearTax
    .plus(now)
    .minus(then)
    .plus(employment)
    .minus(child.times(input.children));
  return toWholeDollars(atLeastZero(projected));
}
