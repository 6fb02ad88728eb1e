import { atLeastZero, Decimal, ZERO } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { bracketTax, type Bracket } from "./bracketTax";
import { gainTax } from "./gainTax";
import { incomeTax } from "./incomeTax";

/** Income for the alternative minimum tax. */
export interface MinimumTaxInput {
  readonly taxYear: TaxYear;
  readonly status: FilingStatus;
  /** Dollars of regular taxable income, negative if deductions exceed income. */
  readonly taxableIncome: Decimal;
  /** Dollars added back: standard deduction or state and local taxes, incentive stock options and similar items. */
  readonly amtAdjustments: Decimal;
  /** Dollars of net long-term gain and qualified dividends. */
  readonly preferentialIncome: Decimal;
}

type MinimumTaxRules = Pick<
  Rulebook,
  "alternativeMinimumTax" | "incomeTaxRates" | "taxTable" | "capitalGainRates"
>;

/**
 * Alternative minimum tax: the amount by which the tentative minimum tax exceeds the regular tax.
 *
 * The tentative tax is 26% and 28% of alternative minimum taxable income above an exemption, which is reduced as income rises.
 * Capital gains keep their own rates if that gives less. For a separate filer the reduction goes on below zero, down to the amount
 * of the exemption.
 *
 * @param input - Dollars.
 * @param rules - Exemptions and brackets by year.
 * @returns Dollars, not rounded, never below zero.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 55, 56(b)(1); Form 6251
 */
export function alternativeMinimumTax(input: MinimumTaxInput, rules: MinimumTaxRules): Decimal {
  const { taxYear, status, taxableIncome, amtAdjustments, preferentialIncome } = input;
  const begins = taxYear.firstDay;
  const { figures } = entryOn(rules.alternativeMinimumTax, begins);
  const minimumIncome = taxableIncome.plus(amtAdjustments);
  const whole = figureForStatus(figures.exemption, status);
  const above = atLeastZero(minimumIncome.minus(figureForStatus(figures.phaseoutAbove, status)));
  const reduced = whole.minus(above.times(figures.phaseoutRate));
  // Section 55(d)(3): a separate filer's income rises by what the other spouse's exemption would have lost.
  const exemption = Decimal.max(reduced, status === "separate" ? whole.negated() : ZERO);
  const base = atLeastZero(minimumIncome.minus(exemption));
  const brackets = figureForStatus<readonly Bracket[]>(figures.brackets, status);
  const flat = (amount: Decimal): Decimal => bracketTax(brackets, ZERO, amount);

  const gain = Decimal.min(base, preferentialIncome);
  const income = atLeastZero(taxableIncome);
  const ordinary = atLeastZero(income.minus(preferentialIncome));
  const onGain = gainTax(status, ordinary, gain, entryOn(rules.capitalGainRates, begins).figures);
  const tentative = Decimal.min(flat(base.minus(gain)).plus(onGain), flat(base));
  const regular = incomeTax(taxYear, status, income, preferentialIncome, rules);
  return atLeastZero(tentative.minus(regular));
}
