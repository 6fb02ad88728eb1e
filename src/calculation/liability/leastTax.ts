import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import type { GrossIncome } from "./grossIncome";
import type { LiabilityLine } from "./liabilityLine";
import { item, type ReturnItems } from "./returnItems";
import { taxableIncome, type DeductionChoice, type TaxableIncome } from "./taxableIncome";
import { taxLessCredits, type TaxLessCredits } from "./taxLessCredits";

/** Taxable income and tax with the deductions chosen. */
export interface LeastTax extends TaxLessCredits {
  /** The lines from the deductions to the last credit. */
  readonly lines: readonly LiabilityLine[];
}

interface Alternative {
  readonly taxable: TaxableIncome;
  readonly tax: TaxLessCredits;
}

type LeastTaxRules = Parameters<typeof taxableIncome>[5] & Parameters<typeof taxLessCredits>[5];

const REMARKS: Readonly<Record<DeductionChoice, string>> = {
  standard: " (smaller than the itemized deductions, but total tax is lower)",
  itemized: " (smaller than the deductions without itemizing, but total tax is lower)",
};

/** The lines of an alternative; the first of them is the deduction, which the remark explains. */
function linesOf({ taxable, tax }: Alternative, remark: string): readonly LiabilityLine[] {
  const lines = [...taxable.lines, ...tax.lines];
  return lines.map((line, index) => (index === 0 ? { ...line, what: line.what + remark } : line));
}

/**
 * Income tax and alternative minimum tax, less credits, with the deductions that lead to the least tax.
 *
 * A return may itemize less than the standard deduction. That lowers the total where the alternative minimum tax is due, which adds
 * the standard deduction back. Where both lead to the same tax, the larger deductions are taken, and the standard deduction where
 * they are equal. A return without any itemized deductions takes the standard deduction.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param items - Known items, dollars.
 * @param gross - Adjusted gross income and its parts.
 * @param rules - Deductions, rates and credits by year.
 * @returns The lines, with a remark where the smaller deductions are taken, and the tax in whole dollars.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 63(b), (e), 56(b)(1)(D)
 */
export function leastTax(
  taxYear: TaxYear,
  status: FilingStatus,
  items: ReturnItems,
  gross: GrossIncome,
  rules: LeastTaxRules
): LeastTax {
  const alternative = (choice: DeductionChoice): Alternative => {
    const taxable = taxableIncome(taxYear, status, items, gross, choice, rules);
    return { taxable, tax: taxLessCredits(taxYear, status, items, gross, taxable, rules) };
  };
  const standard = alternative("standard");
  const canItemize =
    item(items, "itemizedDeductions").greaterThan(0) ||
    item(items, "stateAndLocalTaxes").greaterThan(0);
  if (!canItemize) return { lines: linesOf(standard, ""), amount: standard.tax.amount };

  const itemized = alternative("itemized");
  const moreTax = itemized.tax.amount.comparedTo(standard.tax.amount);
  const moreDeducted = itemized.taxable.deduction.comparedTo(standard.taxable.deduction);
  const isLess = moreTax < 0 || (moreTax === 0 && moreDeducted > 0);
  const itemizes = isLess && itemized.taxable.deduction.greaterThan(0);
  const chosen = itemizes ? itemized : standard;
  const isSmaller = itemizes ? moreDeducted < 0 : moreDeducted > 0;
  const remark = isSmaller ? REMARKS[itemizes ? "itemized" : "standard"] : "";
  return { lines: linesOf(chosen, remark), amount: chosen.tax.amount };
}
