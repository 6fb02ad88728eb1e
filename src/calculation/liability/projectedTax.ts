import { atLeastZero, toWholeDollars, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import { yearBefore, type TaxYear } from "../taxYear";
import { incomeTax } from "./incomeTax";
import { rateColumn } from "./rateColumn";
import { selfEmploymentTax } from "./selfEmploymentTax";

/** Two amounts of last year's return, and the changes this year; a decrease is negative. */
export interface ProjectedTaxInput {
  /** The year to project. */
  readonly taxYear: TaxYear;
  readonly status: FilingStatus;
  /** Dollars of total tax on last year's return. */
  readonly priorYearTax: Decimal;
  /** Dollars of taxable income on last year's return. */
  readonly priorYearTaxableIncome: Decimal;
  /** Increase of ordinary income in dollars: wages, interest, pensions. */
  readonly ordinary: Decimal;
  /** Increase of business profit in dollars; wages are assumed not to use up the Social Security wage base. */
  readonly businessProfit: Decimal;
  /** Increase of long-term gain and qualified dividends in dollars. */
  readonly gain: Decimal;
  /** Increase of deductions in dollars. */
  readonly deductions: Decimal;
  /** Increase of the number of children under age 17. */
  readonly children: number;
}

/**
 * Total tax projected from last year's return: a documented basis for line 4 if nothing better is known.
 *
 * Last year's total tax, plus this year's tax on the changed income, less last year's tax on last year's income, each at the rates of
 * its year and with the increase of the standard deduction; plus self-employment tax on additional profit, less the child tax credit
 * for additional children. Last year's income is taken at ordinary rates in both years, so that only the changes count.
 *
 * @param input - Dollars.
 * @param rules - Rates, standard deduction, self-employment tax and credit of both years.
 * @returns Whole dollars, never below zero.
 * @throws NotInTableError if the tables do not cover both years.
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
