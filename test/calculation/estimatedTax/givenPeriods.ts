import type { PeriodAmounts } from "../../../src/calculation/estimatedTax/periodAmounts";
import type { DatedTable } from "../../../src/rules/datedTable";
import { rulebook, type Rulebook } from "../../../src/rules/rulebook";
import { day, MADE_UP, rulesFrom, usd } from "./givenEstimates";

/** Amounts of a period as a test describes them; what is left out is nothing. */
export const amountsOf = (
  given: Readonly<Partial<Record<keyof PeriodAmounts, string | number>>>
): PeriodAmounts => {
  const amount = (name: keyof PeriodAmounts) => usd(given[name] ?? 0);
  const ifGiven = (name: keyof PeriodAmounts) =>
    given[name] === undefined ? undefined : usd(given[name]);
  return {
    adjustedGrossIncome: amount("adjustedGrossIncome"),
    itemizedDeductions: amount("itemizedDeductions"),
    netEarnings: amount("netEarnings"),
    wages: amount("wages"),
    businessIncomeDeduction: amount("businessIncomeDeduction"),
    otherTaxes: amount("otherTaxes"),
    credits: amount("credits"),
    standardDeduction: ifGiven("standardDeduction"),
    tax: ifGiven("tax"),
  };
};

/** The figures of a year before those that the tables cover. */
export interface YearFigures {
  readonly taxYear: number;
  readonly standardDeduction: string;
  readonly brackets: readonly { readonly upTo?: string; readonly rate: string }[];
  readonly wageBase?: string;
  readonly socialSecurityRate?: string;
}

/** A table with one entry, from a year on. */
function only<Figures>(
  table: DatedTable<Figures>,
  taxYear: number,
  change: (figures: Figures) => Figures = (figures) => figures
): DatedTable<Figures> {
  const from = day(`${String(taxYear)}-01-01`);
  const [first] = table.entries;
  if (!first) throw new RangeError(`${table.id} has no entry`);
  return {
    ...table,
    knownFrom: from,
    entries: [{ from, figures: change(first.figures), source: MADE_UP }],
  };
}

/** The rulebook with the figures of an earlier year, whatever the filing status. */
export function rulesOfYear(figures: YearFigures): Rulebook {
  const { taxYear } = figures;
  const brackets = figures.brackets.map(({ upTo, rate }) =>
    upTo === undefined ? { rate: usd(rate) } : { upTo: usd(upTo), rate: usd(rate) }
  );
  const amount = usd(figures.standardDeduction);
  return {
    ...rulebook,
    ...rulesFrom(`${String(taxYear)}-01-01`),
    annualizedInstallments: only(rulebook.annualizedInstallments, taxYear),
    taxTable: only(rulebook.taxTable, taxYear),
    itemizedLimit: only(rulebook.itemizedLimit, taxYear),
    dependentStandardDeduction: only(rulebook.dependentStandardDeduction, taxYear),
    incomeTaxRates: only(rulebook.incomeTaxRates, taxYear, () => ({
      brackets: { single: brackets, joint: brackets, separate: brackets, head: brackets },
    })),
    standardDeduction: only(rulebook.standardDeduction, taxYear, (standard) => ({
      ...standard,
      amount: { single: amount, joint: amount, separate: amount, head: amount },
    })),
    selfEmploymentTax: only(rulebook.selfEmploymentTax, taxYear, (tax) => ({
      ...tax,
      wageBase: usd(figures.wageBase ?? 0),
      socialSecurityRate: usd(figures.socialSecurityRate ?? "0.124"),
    })),
  };
}
