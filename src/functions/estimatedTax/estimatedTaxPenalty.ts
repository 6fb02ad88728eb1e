import { estimatedTaxPenalty } from "../../calculation/estimatedTax/estimatedTaxPenalty";
import { moneyCell } from "../cells/answerCell";
import { cellFunction, tableFunction } from "../worksheetFunction";
import { estimatedTaxInputOf, estimatedTaxPayments, estimatedTaxTables } from "./estimatedTaxInput";
import { estimatedTaxPenaltyTable } from "./estimatedTaxPenaltyTable";

const LAW = [
  "IRC sections 6654(a), (b), (d)(2), (e)(1), (g)(1), (h), (i), (j), 6621(b)(2)(B) and 6622(b)",
];
const NOTE =
  "If you enter `periods`, the installments are those of ANNUALIZED, which together never exceed the regular ones. Filing and full payment by January 31 (farmers and fishermen: March 1) avoids the penalty on the last installment: enter `filedOn`, and `paidOn` or, if the payments cover the tax, `currentYearTax`. An extension does not move these dates. Withholding can be entered as payments on its actual dates. Waivers and short tax years are not calculated. A nonresident (Form 1040-NR without wages subject to withholding) has three installments: half of the required annual payment in June, and a quarter each in September and January. Withholding then counts in thirds.";

const ESTPENALTY = cellFunction({
  arguments: estimatedTaxPayments,
  tables: estimatedTaxTables,
  law: LAW,
  examples: [
    { formula: "=EXT.ESTPENALTY(2025,8000,8000,)", answer: "0.00" },
    {
      formula: '=EXT.ESTPENALTY(2025,8000,0,{"6/15/2025",8000},,,,,,,"nonresident")',
      answer: "0.00",
      remark: "a nonresident pays nothing in April",
    },
    {
      formula:
        '=EXT.ESTPENALTY(2025,15000,0,{"1/15/2026",15000},,,,,,,,,"single",{"","Jan-Mar","Jan-May","Jan-Aug","Jan-Dec";"AGI",0,0,0,120000})',
      answer: "0.00",
      remark: "all income after August, so nothing is required before January",
    },
  ],
  note: NOTE,
  calculate: (given, rules) =>
    moneyCell(estimatedTaxPenalty(estimatedTaxInputOf(given, rules), rules).amount),
});

/**
 * Estimated tax penalty from each installment due date until payment or April 15, with regular or annualized installments.
 *
 * @customfunction ESTPENALTY
 * @param taxYear Year the estimated tax was paid for, such as 2025, or the last date of a fiscal year.
 * @param requiredAnnualPayment Required annual payment in dollars; see REQUIREDPAYMENT.
 * @param withholding Tax withheld during the year; counted in equal parts on the installment due dates.
 * @param payments Estimated tax payments as rows of date and amount. Date an applied overpayment the first due date.
 * @param [paidOn] Date the remaining tax is paid; blank is the due date of the return.
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @param [currentYearTax] Tax for the year; blank or 0 if not entered. No penalty applies when less than $1,000 of it remains after withholding.
 * @param [farmerOrFisherman] Yes for farmers and fishermen: one installment, due in January, and March 1 in place of January 31 for filedOn.
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; installments due inside the period move to this date.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [filedOn] Date the return is filed. If filed and paid in full by January 31, the last installment has no penalty.
 * @param [filingStatus] Filing status; needed with periods only.
 * @param [periods] Headings of four periods and labeled rows, as ANNUALIZED takes them; blank is the regular method.
 * @returns Dollars and cents; each line of the calculation is rounded, as on Form 2210.
 */
export function estPenalty(
  taxYear: unknown,
  requiredAnnualPayment: unknown,
  withholding: unknown,
  payments: unknown[][],
  paidOn?: unknown,
  assumedRate?: unknown,
  currentYearTax?: unknown,
  farmerOrFisherman?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown,
  filerType?: unknown,
  filedOn?: unknown,
  filingStatus?: unknown,
  periods?: unknown[][]
): unknown;
export function estPenalty(...cells: unknown[]): unknown {
  return ESTPENALTY.answer(cells);
}

const ESTPENALTYLINES = tableFunction({
  arguments: estimatedTaxPayments,
  tables: estimatedTaxTables,
  law: LAW,
  examples: [
    {
      formula: '=EXT.ESTPENALTYLINES(2025,8000,0,{"4/15/2025",6000})',
      answer: "34.52",
      remark: "2,000 of the fourth installment for 90 days",
    },
  ],
  note: NOTE,
  calculate: (given, rules) => {
    const input = estimatedTaxInputOf(given, rules);
    const penalty = estimatedTaxPenalty(input, rules);
    return estimatedTaxPenaltyTable(penalty, input.isExcepted, given.farmerOrFisherman);
  },
});

/**
 * Table of the ESTPENALTY calculation by installment and interest rate period; the amounts add up to it.
 *
 * @customfunction ESTPENALTYLINES
 * @param taxYear Year the estimated tax was paid for, such as 2025, or the last date of a fiscal year.
 * @param requiredAnnualPayment Required annual payment in dollars; see REQUIREDPAYMENT.
 * @param withholding Tax withheld during the year; counted in equal parts on the installment due dates.
 * @param payments Estimated tax payments as rows of date and amount. Date an applied overpayment the first due date.
 * @param [paidOn] Date the remaining tax is paid; blank is the due date of the return.
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @param [currentYearTax] Tax for the year; blank or 0 if not entered. No penalty applies when less than $1,000 of it remains after withholding.
 * @param [farmerOrFisherman] Yes for farmers and fishermen: one installment, due in January, and March 1 in place of January 31 for filedOn.
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; installments due inside the period move to this date.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [filedOn] Date the return is filed. If filed and paid in full by January 31, the last installment has no penalty.
 * @param [filingStatus] Filing status; needed with periods only.
 * @param [periods] Headings of four periods and labeled rows, as ANNUALIZED takes them; blank is the regular method.
 * @returns {any[][]} A row of headings, then one row per installment and rate period. Fills several cells; not for use inside an Excel table.
 */
export function estPenaltyLines(
  taxYear: unknown,
  requiredAnnualPayment: unknown,
  withholding: unknown,
  payments: unknown[][],
  paidOn?: unknown,
  assumedRate?: unknown,
  currentYearTax?: unknown,
  farmerOrFisherman?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown,
  filerType?: unknown,
  filedOn?: unknown,
  filingStatus?: unknown,
  periods?: unknown[][]
): unknown[][];
export function estPenaltyLines(...cells: unknown[]): unknown[][] {
  return ESTPENALTYLINES.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const estimatedTaxPenaltyFunctions = { ESTPENALTY, ESTPENALTYLINES };
