import { atLeastZero, Decimal, ZERO } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { gainTax } from "./gainTax";
import { incomeTax } from "./incomeTax";

/** Income as the minimum tax sees it. */
export interface MinimumTaxInput {
  readonly taxYear: TaxYear;
  readonly status: FilingStatus;
  /** Dollars of regular taxable income, not held to zero. */
  readonly taxableIncome: Decimal;
  /** Dollars added back: the standard deduction or state and local taxes, incentive stock options and the like. */
  readonly amtAdjustments: Decimal;
  /** Dollars of net long-term gain and qualified dividends. */
  readonly preferentialIncome: Decimal;
}

type MinimumTaxRules = Pick<
  Rulebook,
  "alternativeMinimumTax" | "incomeTaxRates" | "capitalGainRates"
>;

/**
 * Alternative minimum tax: what the tentative minimum tax is above the regular one.
 *
 * 26 and 28% of minimum taxable income above an exemption that shrinks with income; gains keep their own rates where that is
 * less. A separate filer's income rises beyond the exemption, until it has lost as much again.
 *
 * @param input - Dollars.
 * @param rules - Exemptions, rates, edges by year.
 * @returns Dollars, not rounded, never below zero.
 * @throws NotInTableError for a year whose figures are not held.
 * @see 26 U.S.C. 55, 56(b)(1); Form 6251
 */
export function alternativeMinimumTax(input: MinimumTaxInput, rules: MinimumTaxRules): Decimal {
  const { taxYear, status, taxableIncome, amtAdjustments, preferentialIncome } = input;
  const begins = taxYear.firstDay;
  const { figures } = entryOn(rules.alternativeMinimumTax, begins);
  const group = {
    single: "Single",
    head: "Single",
    joint: "Joint",
    survivor: "Joint",
    separate: "Separate",
  } as const satisfies Record<FilingStatus, string>;
  const minimumIncome = taxableIncome.plus(amtAdjustments);
  const whole = figures[`exemption${group[status]}`];
  const above = atLeastZero(minimumIncome.minus(figures[`phaseout${group[status]}`]));
  const lost = above.times(figures.phaseoutRate);
  // A separate filer goes on losing, as the other spouse's exemption would (section 55(d)(3)).
  const exemption = Decimal.max(whole.minus(lost), status === "separate" ? whole.negated() : ZERO);
  const base = atLeastZero(minimumIncome.minus(exemption));
  const edge = status === "separate" ? figures.higherRateAboveSeparate : figures.higherRateAbove;
  const flat = (amount: Decimal): Decimal =>
    Decimal.min(amount, edge)
      .times(figures.lowerRate)
      .plus(atLeastZero(amount.minus(edge)).times(figures.higherRate));

  const gain = Decimal.min(base, preferentialIncome);
  const income = atLeastZero(taxableIncome);
  const ordinary = atLeastZero(income.minus(preferentialIncome));
  const onGain = gainTax(status, ordinary, gain, entryOn(rules.capitalGainRates, begins).figures);
  const tentative = Decimal.min(flat(base.minus(gain)).plus(onGain), flat(base));
  const regular = incomeTax(taxYear, status, income, preferentialIncome, rules);
  return atLeastZero(tentative.minus(regular));
}
