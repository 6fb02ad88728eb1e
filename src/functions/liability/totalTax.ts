import { projectedTax as projectedTaxOf } from "../../calculation/liability/projectedTax";
import { totalPayments } from "../../calculation/liability/totalPayments";
import { totalTax } from "../../calculation/liability/totalTax";
import { toCents } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import { liabilityTables as liabilityRules } from "../../rules/liabilityTables";
import { changes } from "../arguments/changes";
import { dollars } from "../arguments/dollars";
import { returnItems } from "../arguments/returnItems";
import { taxYear } from "../arguments/taxYear";
import { filingStatus } from "../arguments/words";
import { BLANK, citation, moneyCell, wholeDollarCell } from "../cells/answerCell";
import { cellFunction, tableFunction } from "../worksheetFunction";

/** The rule tables that the estimate of total tax depends on. */
const liabilityTables = Object.keys(liabilityRules) as readonly (keyof typeof liabilityRules &
  keyof Rulebook)[];

const LEFT_OUT =
  "An estimate, not a return. Left out: capital gains taxed at 25% and 28%, loss limits on rentals and partnerships, self-employment tax and net investment income tax on partnership income, several businesses, foreign income, education and energy credits unless entered as credits, the refundable child tax credit, the premium tax credit, the 0.5% floor under charitable contributions for 2026, the tax on a child's investment income, income averaging for farmers.";

const LIABILITY = cellFunction({
  arguments: { taxYear, filingStatus, items: returnItems },
  tables: liabilityTables,
  law: ["Form 1040, lines 1 to 24"],
  examples: [{ formula: '=EXT.LIABILITY(2025,"single",{"wages",75750})', answer: "8,120" }],
  note: "A good-faith estimate, not a return. The last row of LIABILITYLINES lists what is left out.",
  calculate: (given, rules) =>
    wholeDollarCell(totalTax(given.taxYear, given.filingStatus, given.items, rules).amount),
});

/**
 * Estimated total tax for Form 4868, line 4, from the items of the return known so far.
 *
 * @customfunction LIABILITY
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year.
 * @param filingStatus Single (S), married filing jointly (MFJ) or separately (MFS), head of household (HOH), or qualifying surviving spouse (QSS).
 * @param items Rows of label and amount, such as wages, interest, business profit, children under 17. Repeated labels add up.
 * @returns Whole dollars.
 */
export function liability(taxYear: unknown, filingStatus: unknown, items: unknown[][]): unknown;
export function liability(...cells: unknown[]): unknown {
  return LIABILITY.answer(cells);
}

const LIABILITYLINES = tableFunction({
  arguments: { taxYear, filingStatus, items: returnItems },
  tables: liabilityTables,
  law: ["Form 1040, lines 1 to 24"],
  examples: [
    {
      formula: '=EXT.LIABILITYLINES(2025,"single",{"wages",75750})',
      answer: "60,000",
      remark: "taxable income",
    },
  ],
  note: "The last row lists what is left out.",
  calculate: (given, rules) => [
    ["Item", "Amount", "Source"],
    ...totalTax(given.taxYear, given.filingStatus, given.items, rules).lines.map(
      ({ what, amount, source }) => [
        what,
        wholeDollarCell(amount),
        source ? citation(source) : BLANK,
      ]
    ),
    [LEFT_OUT, BLANK, BLANK],
  ],
});

/**
 * Table of the LIABILITY calculation line by line, with sources and a list of what it leaves out.
 *
 * @customfunction LIABILITYLINES
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year.
 * @param filingStatus Single (S), married filing jointly (MFJ) or separately (MFS), head of household (HOH), or qualifying surviving spouse (QSS).
 * @param items Rows of label and amount, such as wages, interest, business profit, children under 17. Repeated labels add up.
 * @returns {any[][]} A row of headings, then one row per line in whole dollars. Fills several cells; not for use inside an Excel table.
 */
export function liabilityLines(
  taxYear: unknown,
  filingStatus: unknown,
  items: unknown[][]
): unknown[][];
export function liabilityLines(...cells: unknown[]): unknown[][] {
  return LIABILITYLINES.answer(cells);
}

const PAYMENTSTOTAL = cellFunction({
  arguments: { items: returnItems },
  tables: [],
  law: ["Form 4868, line 5"],
  examples: [
    {
      formula: '=EXT.PAYMENTSTOTAL({"withholding",9000;"1040-ES",2000.50;"wages",80000})',
      answer: "11,000.50",
    },
  ],
  calculate: ({ items }) => moneyCell(toCents(totalPayments(items))),
});

/**
 * Total payments for Form 4868, line 5, from the same rows, without the amount paid with the request.
 *
 * @customfunction PAYMENTSTOTAL
 * @param items The rows that LIABILITY takes. Withholding, estimated payments, overpayment applied and refundable credits count.
 * @returns Dollars and cents.
 */
export function paymentsTotal(items: unknown[][]): unknown;
export function paymentsTotal(...cells: unknown[]): unknown {
  return PAYMENTSTOTAL.answer(cells);
}

const PROJECTEDTAX = cellFunction({
  arguments: {
    taxYear,
    filingStatus,
    priorYearTax: dollars,
    priorYearTaxableIncome: dollars,
    changes,
  },
  tables: [
    "standardDeduction",
    "selfEmploymentTax",
    "incomeTaxRates",
    "taxTable",
    "capitalGainRates",
    "childTaxCredit",
  ],
  law: ["Regulations section 1.6081-4(b)", "Form 4868 instructions, line 4"],
  examples: [{ formula: '=EXT.PROJECTEDTAX(2025,"single",8341,60000)', answer: "7,949" }],
  calculate: ({ filingStatus: status, changes: differences, ...given }, rules) =>
    wholeDollarCell(projectedTaxOf({ ...given, status, ...differences }, rules)),
});

/**
 * Estimated total tax of the new year from last year's items and the changes you expect.
 *
 * @customfunction PROJECTEDTAX
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year.
 * @param filingStatus Single (S), married filing jointly (MFJ) or separately (MFS), head of household (HOH), or qualifying surviving spouse (QSS).
 * @param priorYearTax Total tax on last year's return, in dollars.
 * @param priorYearTaxableIncome Taxable income on last year's return, in dollars.
 * @param [changes] Rows of label and difference from last year, such as wages and 5000; negative for a decrease. Blank is no change.
 * @returns Whole dollars.
 */
export function projectedTax(
  taxYear: unknown,
  filingStatus: unknown,
  priorYearTax: unknown,
  priorYearTaxableIncome: unknown,
  changes?: unknown[][]
): unknown;
export function projectedTax(...cells: unknown[]): unknown {
  return PROJECTEDTAX.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const totalTaxFunctions = { LIABILITY, LIABILITYLINES, PAYMENTSTOTAL, PROJECTEDTAX };
