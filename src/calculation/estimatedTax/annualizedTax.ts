import { atLeastZero, Decimal, toWholeDollars, ZERO } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import type { FilerType } from "../filerType";
import type { FilingStatus } from "../filingStatus";
import { limitedItemizedDeductions } from "../liability/limitedItemizedDeductions";
import { ordinaryTax } from "../liability/ordinaryTax";
import { standardDeduction } from "../liability/standardDeduction";
import type { TaxYear } from "../taxYear";
import type { AnnualizationPeriod } from "./annualizationPeriods";
import {
  annualizedSelfEmploymentTax,
  type AnnualizedSelfEmploymentTax,
} from "./annualizedSelfEmploymentTax";
import type { PeriodAmounts } from "./periodAmounts";

/** The tax for a year if its income continued as in a period. Whole dollars. */
export interface AnnualizedTax {
  readonly income: Decimal;
  readonly itemized: Decimal;
  readonly standard: Decimal;
  /** The larger of the two. */
  readonly chosen: Decimal;
  readonly deductions: Decimal;
  /** Negative where the deductions are more than the income. */
  readonly afterDeductions: Decimal;
  readonly taxableIncome: Decimal;
  readonly incomeTax: Decimal;
  /** With its parts, which are not rounded. */
  readonly selfEmployment: AnnualizedSelfEmploymentTax;
  readonly selfEmploymentTax: Decimal;
  readonly total: Decimal;
  /** After credits, never below zero. */
  readonly tax: Decimal;
}

type AnnualizedTaxRules = Pick<
  Rulebook,
  | "incomeTaxRates"
  | "taxTable"
  | "standardDeduction"
  | "dependentStandardDeduction"
  | "itemizedLimit"
  | "selfEmploymentTax"
>;

/**
 * Tax for the year on the annualized income of a period, as in lines 1 to 19 of Schedule AI.
 *
 * Income and itemized deductions of the period are multiplied. The limit of section 68 applies to the annualized itemized deductions.
 * A nonresident alien has no standard deduction, unless one is given. The tax is at ordinary rates, unless it is given.
 *
 * @param taxYear - The year whose tax is estimated.
 * @param status - Filing status in that year.
 * @param filerType - Filer type in that year.
 * @param amounts - Amounts of the period, dollars.
 * @param period - The period and its factor.
 * @param rules - Rates and deductions by year.
 * @returns The lines, each in whole dollars.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see 26 U.S.C. 6654(d)(2)(B)(i), (f), 63(c)(6)(B); Form 2210, Schedule AI, lines 1 to 19
 */
export function annualizedTax(
  taxYear: TaxYear,
  status: FilingStatus,
  filerType: FilerType,
  amounts: PeriodAmounts,
  period: AnnualizationPeriod,
  rules: AnnualizedTaxRules
): AnnualizedTax {
  const regular = (): Decimal =>
    filerType === "nonresident" ? ZERO : standardDeduction(taxYear, status, 0, undefined, rules);
  const income = toWholeDollars(amounts.adjustedGrossIncome.times(period.factor));
  const others = toWholeDollars(amounts.businessIncomeDeduction);
  const listed = amounts.itemizedDeductions.times(period.factor);
  const itemized = toWholeDollars(
    limitedItemizedDeductions(taxYear, status, listed, income.minus(others), rules)
  );
  const standard = toWholeDollars(amounts.standardDeduction ?? regular());
  const chosen = Decimal.max(itemized, standard);
  const deductions = chosen.plus(others);
  const afterDeductions = income.minus(deductions);
  const taxableIncome = atLeastZero(afterDeductions);
  const incomeTax = toWholeDollars(
    amounts.tax ?? ordinaryTax(taxYear, status, taxableIncome, rules)
  );
  const { netEarnings, wages } = amounts;
  const selfEmployment = annualizedSelfEmploymentTax(taxYear, netEarnings, wages, period, rules);
  const selfEmploymentTax = toWholeDollars(selfEmployment.tax);
  const total = incomeTax.plus(selfEmploymentTax).plus(toWholeDollars(amounts.otherTaxes));
  return {
    income,
    itemized,
    standard,
    chosen,
    deductions,
    afterDeductions,
    taxableIncome,
    incomeTax,
    selfEmployment,
    selfEmploymentTax,
    total,
    tax: atLeastZero(total.minus(toWholeDollars(amounts.credits))),
  };
}
