import type { AnnualizedColumn } from "../../calculation/estimatedTax/annualizedColumns";
import type { AnnualizedInstallment } from "../../calculation/estimatedTax/annualizedInstallments";
import type { TaxYear } from "../../calculation/taxYear";
import { toCents, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Source } from "../../rules/source";
import { periodHeadings } from "../arguments/periodHeadings";
import {
  BLANK,
  citation,
  moneyCell,
  percentCell,
  type AnswerCell,
  type AnswerTable,
} from "../cells/answerCell";
import type { AnnualizedAnswer, AnnualizedRules } from "./annualizedYear";

/** A line of Schedule AI: its number, its text, its cell in a column, and the source of its figures. */
type Line<Column> = readonly [
  number: number,
  what: string,
  cell: (column: Column) => AnswerCell,
  source?: Source,
];

const money = (amount: Decimal): AnswerCell => moneyCell(toCents(amount));

type LineSources = Readonly<Record<"standard" | "rates" | "share" | "employment", Source>>;

/** Lines 1 to 21. Lines 5 and 12 are left out: the factor of line 2 again, and exemptions of estates and trusts. */
function taxLines(law: LineSources): readonly Line<AnnualizedColumn>[] {
  return [
    [1, "Adjusted gross income of the period", ({ amounts }) => money(amounts.adjustedGrossIncome)],
    [2, "Annualization factor", ({ period }) => period.factor.toNumber()],
    [3, "Annualized income", ({ tax }) => money(tax.income)],
    [4, "Itemized deductions of the period", ({ amounts }) => money(amounts.itemizedDeductions)],
    [6, "Annualized itemized deductions", ({ tax }) => money(tax.itemized)],
    [7, "Standard deduction", ({ tax }) => money(tax.standard), law.standard],
    [8, "Larger of lines 6 and 7", ({ tax }) => money(tax.chosen)],
    [9, "Business income deduction", ({ amounts }) => money(amounts.businessIncomeDeduction)],
    [10, "Line 8 plus line 9", ({ tax }) => money(tax.deductions)],
    [11, "Line 3 minus line 10", ({ tax }) => money(tax.afterDeductions)],
    [13, "Annualized taxable income", ({ tax }) => money(tax.taxableIncome)],
    [14, "Income tax on line 13", ({ tax }) => money(tax.incomeTax), law.rates],
    [15, "Self-employment tax, line 36", ({ tax }) => money(tax.selfEmploymentTax)],
    [16, "Other taxes", ({ amounts }) => money(amounts.otherTaxes)],
    [17, "Total tax", ({ tax }) => money(tax.total)],
    [18, "Credits", ({ amounts }) => money(amounts.credits)],
    [19, "Tax after credits", ({ tax }) => money(tax.tax)],
    [20, "Applicable percentage", ({ share }) => percentCell(share), law.share],
    [21, "Line 19 times line 20", ({ dueThrough }) => money(dueThrough)],
  ];
}

/** Lines 22 to 27. */
function installmentLines(law: Source): readonly Line<AnnualizedInstallment>[] {
  return [
    [22, "Required installments of earlier columns", ({ earlier }) => money(earlier)],
    [23, "Annualized income installment", ({ annualized }) => money(annualized)],
    [24, "Part of the required annual payment", ({ regular }) => money(regular), law],
    [25, "Earlier reduction to recapture", ({ saved }) => money(saved)],
    [26, "Line 24 plus line 25", ({ regularAndSaved }) => money(regularAndSaved)],
    [27, "Required installment", ({ required }) => money(required)],
  ];
}

/** Lines 28 to 36, without the factors of lines 32 and 34. */
function employmentLines(law: Source): readonly Line<AnnualizedColumn>[] {
  return [
    [28, "Net self-employment earnings", ({ amounts }) => money(amounts.netEarnings)],
    [
      29,
      "Prorated Social Security tax limit",
      ({ tax }) => money(tax.selfEmployment.wageBase),
      law,
    ],
    [30, "Wages of the period", ({ amounts }) => money(amounts.wages)],
    [31, "Line 29 minus line 30", ({ tax }) => money(tax.selfEmployment.room)],
    [33, "Social Security part", ({ tax }) => money(tax.selfEmployment.socialSecurity), law],
    [35, "Medicare part", ({ tax }) => money(tax.selfEmployment.medicare), law],
    [36, "Self-employment tax", ({ tax }) => money(tax.selfEmploymentTax)],
  ];
}

/** Schedule AI line by line: headings, then one row per line with a column for each installment. */
export function annualizedTable(
  taxYear: TaxYear,
  { columns, installments }: AnnualizedAnswer,
  rules: AnnualizedRules
): AnswerTable {
  const { firstDay, lastDay } = taxYear;
  const employment = entryOn(rules.selfEmploymentTax, firstDay).source;
  const law: LineSources = {
    standard: entryOn(rules.standardDeduction, firstDay).source,
    rates: entryOn(rules.incomeTaxRates, firstDay).source,
    share: entryOn(rules.annualizedInstallments, lastDay).source,
    employment,
  };
  const rowsOf = <Column>(lines: readonly Line<Column>[], of: readonly Column[]): AnswerTable =>
    lines.map(([number, what, cell, source]) => [
      number,
      what,
      ...of.map(cell),
      source === undefined ? BLANK : citation(source),
    ]);
  const headings = periodHeadings(
    taxYear,
    columns.map(({ period }) => period)
  );
  const isSelfEmployed = columns.some(({ amounts }) => !amounts.netEarnings.isZero());
  const regular = entryOn(rules.requiredAnnualPayment, lastDay).source;
  return [
    ["Line", "Item", ...headings, "Source"],
    ...rowsOf(taxLines(law), columns),
    ...(installments.length > 0 ? rowsOf(installmentLines(regular), installments) : []),
    ...(isSelfEmployed ? rowsOf(employmentLines(employment), columns) : []),
  ];
}
