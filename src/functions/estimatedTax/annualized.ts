import { dollarsUnlessZero } from "../arguments/dollars";
import { periods } from "../arguments/periods";
import { taxYear } from "../arguments/taxYear";
import { filerType, filingStatus } from "../arguments/words";
import { tableFunction } from "../worksheetFunction";
import { annualizedTable } from "./annualizedTable";
import { annualizedTables, annualizedYear } from "./annualizedYear";

const ANNUALIZED = tableFunction({
  arguments: {
    taxYear,
    filingStatus,
    periods,
    requiredAnnualPayment: dollarsUnlessZero,
    filerType,
  },
  tables: annualizedTables,
  law: [
    "IRC sections 6654(d)(2), (j) and 1402(b)",
    "Form 2210, Schedule AI, and its instructions for Form 1040-NR",
  ],
  examples: [
    {
      formula:
        '=EXT.ANNUALIZED(2025,"single",{"","Jan-Mar","Jan-May","Jan-Aug","Jan-Dec";"AGI",10000,20000,60000,120000},15000)',
      answer: "2,675.00",
      remark:
        "income tax on the annualized income of the first period, line 14; the required installments are on line 27",
    },
  ],
  note: "Line numbers follow the forms for 2018 through 2021; later forms were not checked. Lines 1 to 21 are in whole dollars, apart from what you enter. Tax is at ordinary rates: for capital gains enter the `tax on the annualized income`. Enter itemized deductions before the section 68 limit, which applies from 2026. Self-employment tax is for one person: add a spouse's annualized tax to other taxes. A nonresident has no standard deduction unless you enter one, skips the first column, and includes 30% of income that is not effectively connected in other taxes. The percentages of a nonresident are those of the form's instructions, because section 6654(j)(3)(B) prints a table for four installments.",
  calculate: ({ taxYear: year, filingStatus: status, requiredAnnualPayment, ...given }, rules) =>
    annualizedTable(
      year,
      annualizedYear({ taxYear: year, status, ...given }, requiredAnnualPayment, rules),
      rules
    ),
});

/**
 * Table of the required installments by the annualized income installment method, line by line as in Form 2210, Schedule AI.
 *
 * @customfunction ANNUALIZED
 * @param taxYear Year the estimated tax is for, such as 2025, or the last date of a fiscal year.
 * @param filingStatus Single (S), married filing jointly (MFJ) or separately (MFS), head of household (HOH), or qualifying surviving spouse (QSS).
 * @param periods Headings of four periods from the first day of the year, then labeled rows: AGI, itemized deductions, other taxes, credits.
 * @param [requiredAnnualPayment] Required annual payment in dollars; see REQUIREDPAYMENT. Blank or 0 ends the table before the installments.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @returns {any[][]} A row of headings, then one row per line of the form. Fills several cells; not for use inside an Excel table.
 */
export function annualized(
  taxYear: unknown,
  filingStatus: unknown,
  periods: unknown[][],
  requiredAnnualPayment?: unknown,
  filerType?: unknown
): unknown[][];
export function annualized(...cells: unknown[]): unknown[][] {
  return ANNUALIZED.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const annualizedFunctions = { ANNUALIZED };
