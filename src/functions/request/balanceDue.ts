import { requestLines } from "../../calculation/request/requestLines";
import { shortfall as balanceDue } from "../../calculation/request/shortfall";
import { suggestedPayment } from "../../calculation/request/suggestedPayment";
import { toCents } from "../../money/dollars";
import { optional } from "../arguments/argumentKind";
import { dollars } from "../arguments/dollars";
import { cushion, target } from "../arguments/percent";
import { taxYear } from "../arguments/taxYear";
import { filerType } from "../arguments/words";
import { BLANK, cellOrBlank, citation, moneyCell, wholeDollarCell } from "../cells/answerCell";
import { rowFunction, tableFunction } from "../worksheetFunction";

const SHORTFALL = rowFunction({
  arguments: { totalTax: dollars, payments: dollars },
  tables: [],
  law: ["Form 4868, lines 4 to 6"],
  examples: [{ formula: "=EXT.SHORTFALL(18250,15000)", answer: "3,250.00" }],
  calculate: ({ totalTax, payments }) => moneyCell(toCents(balanceDue(totalTax, payments))),
});

/**
 * Balance due for Form 4868, line 6: estimated total tax minus total payments, never below zero.
 *
 * @customfunction SHORTFALL
 * @param totalTax Estimated total tax, line 4, in dollars.
 * @param payments Total payments, line 5, without the amount paid with the request.
 * @returns {any[][]} Dollars and cents, line 6.
 */
export function shortfall(totalTax: unknown[][], payments: unknown[][]): unknown[][];
export function shortfall(...cells: unknown[]): unknown[][] {
  return SHORTFALL.answer(cells);
}

const SUGGEST = rowFunction({
  arguments: {
    totalTax: dollars,
    payments: dollars,
    target,
    cushion,
    firstInstallment: optional(dollars),
  },
  tables: ["reasonableCauseTest"],
  law: ["Regulations section 301.6651-1(c)(3)", "Rev. Rul. 99-40"],
  examples: [
    { formula: "=EXT.SUGGEST(20000,15000)", answer: "5,000.00" },
    {
      formula: '=EXT.SUGGEST(20000,15000,"reasonable cause")',
      answer: "3,000.00",
      remark: "90% of the tax is paid by the due date",
    },
    { formula: '=EXT.SUGGEST(20000,15000,"full",5%,2500)', answer: "8,500.00" },
  ],
  calculate: (given, rules) => moneyCell(suggestedPayment(given, rules)),
});

/**
 * Suggested payment with the request: balance due, or a percent of tax, plus any cushion and first installment.
 *
 * @customfunction SUGGEST
 * @param totalTax Estimated total tax, line 4, in dollars.
 * @param payments Total payments, line 5, without the amount paid with the request.
 * @param [target] full (default), reasonable cause (just enough for the 90% test; interest still accrues), or a percent of total tax such as 95%.
 * @param [cushion] Extra amount in case the estimate is low: a percent of total tax such as 5%, or dollars.
 * @param [firstInstallment] First estimated tax installment of the next year, due the same date. Unless target is full, pay it separately.
 * @returns {any[][]} Dollars and cents, rounded up to the cent, never below zero.
 */
export function suggest(
  totalTax: unknown[][],
  payments: unknown[][],
  target?: unknown[][],
  cushion?: unknown[][],
  firstInstallment?: unknown[][]
): unknown[][];
export function suggest(...cells: unknown[]): unknown[][] {
  return SUGGEST.answer(cells);
}

const LINES = tableFunction({
  arguments: { taxYear, totalTax: dollars, payments: dollars, paidWithRequest: dollars, filerType },
  tables: ["requestLines"],
  law: ["Form 4868, lines 4 to 9", "IRC section 6102(a)"],
  examples: [
    {
      formula: "=EXT.LINES(2025,18249.50,15000.49,3000)",
      answer: "3,250",
      remark: "balance due, line 6",
    },
  ],
  calculate: ({ taxYear: year, totalTax, payments, paidWithRequest, filerType: who }, rules) => [
    ["Line", "Description", "Amount", "Checked", "Source"],
    ...requestLines(year, totalTax, payments, paidWithRequest, who, rules).map(
      ({ line, what, amount, checked, source }) => [
        line,
        what,
        cellOrBlank(amount, wholeDollarCell),
        checked ? "X" : BLANK,
        citation(source),
      ]
    ),
  ],
});

/**
 * Table of Form 4868, lines 4 to 9, in whole dollars.
 *
 * @customfunction LINES
 * @param taxYear Tax year of the form, such as 2025, or the last date of a fiscal year.
 * @param totalTax Estimated total tax, line 4, in dollars.
 * @param payments Total payments, line 5, without the amount paid with the request.
 * @param paidWithRequest Amount paid with the request, line 7, in dollars; 0 if none.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @returns {any[][]} A row of headings, then one row per line. Fills several cells; not for use inside an Excel table.
 */
export function lines(
  taxYear: unknown,
  totalTax: unknown,
  payments: unknown,
  paidWithRequest: unknown,
  filerType?: unknown
): unknown[][];
export function lines(...cells: unknown[]): unknown[][] {
  return LINES.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const balanceDueFunctions = { SHORTFALL, SUGGEST, LINES };
