import { totalPayments } from "../../calculation/liability/totalPayments";
import { totalTax } from "../../calculation/liability/totalTax";
import { toCents } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import { liabilityReaders } from "../../rules/liabilityTables";
import { changes } from "../arguments/changes";
import {
  addedUp,
  isPayment,
  paymentItems,
  returnItems,
  returnRows,
  type EnteredItem,
} from "../arguments/returnItems";
import { taxYear } from "../arguments/taxYear";
import { filingStatus } from "../arguments/words";
import { BLANK, citation, moneyCell, wholeDollarCell, type AnswerTable } from "../cells/answerCell";
import { cellFunction, tableFunction } from "../worksheetFunction";
import { changedItems } from "./changedItems";
import { LEFT_OUT } from "./leftOut";

/** The rule tables that the estimate of total tax depends on. */
const liabilityTables = Object.keys(liabilityReaders) as readonly (keyof typeof liabilityReaders &
  keyof Rulebook)[];

const LEFT_OUT_SENTENCE = `An estimate, not a return. Left out: ${LEFT_OUT.join(", ")}.`;

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

/** Rows of items that were entered more than once, such as two Forms W-2 with the names of the spouses. Payments are not part of the tax. */
function enteredApart(entered: readonly EnteredItem[]): AnswerTable {
  const isRepeated = ({ item }: EnteredItem): boolean =>
    !isPayment(item) && entered.filter((other) => other.item === item).length > 1;
  return entered
    .filter(isRepeated)
    .map(({ label, amount }) => [`Entered: ${label}`, moneyCell(toCents(amount)), BLANK]);
}

const LIABILITYLINES = tableFunction({
  arguments: { taxYear, filingStatus, items: returnRows },
  tables: liabilityTables,
  law: ["Form 1040, lines 1 to 24"],
  examples: [
    {
      formula: '=EXT.LIABILITYLINES(2025,"single",{"wages",75750})',
      answer: "60,000",
      remark: "taxable income",
    },
    {
      formula: '=EXT.LIABILITYLINES(2025,"joint",{"W-2 (Ana)",40000;"W-2 (Bo)",35750})',
      answer: "Entered: W-2 (Bo)",
      remark: "rows of the same item stay apart and add up",
    },
  ],
  note: "Items that are entered in several rows are listed first, as they were entered. The last row lists what is left out.",
  calculate: (given, rules) => [
    ["Item", "Amount", "Source"],
    ...enteredApart(given.items),
    ...totalTax(given.taxYear, given.filingStatus, addedUp(given.items), rules).lines.map(
      ({ what, amount, source }) => [
        what,
        wholeDollarCell(amount),
        source ? citation(source) : BLANK,
      ]
    ),
    [LEFT_OUT_SENTENCE, BLANK, BLANK],
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
  arguments: { items: paymentItems },
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
 * @param items The rows that LIABILITY takes. Withholding, estimated payments, overpayment applied and refundable credits count; blank is none.
 * @returns Dollars and cents.
 */
export function paymentsTotal(items: unknown[][]): unknown;
export function paymentsTotal(...cells: unknown[]): unknown {
  return PAYMENTSTOTAL.answer(cells);
}

const PROJECTEDTAX = cellFunction({
  arguments: { taxYear, filingStatus, priorYearItems: returnItems, changes },
  tables: liabilityTables,
  law: ["Regulations section 1.6081-4(b)", "Form 4868 instructions, line 4"],
  examples: [
    {
      formula: '=EXT.PROJECTEDTAX(2025,"single",{"wages",75000},{"wages","1%"})',
      answer: "8,120",
      remark: "what LIABILITY returns for wages of 75,750",
    },
    {
      formula:
        '=EXT.PROJECTEDTAX(2025,"single",{"wages",64600;"long-term gain",100000},{"long-term gain",-100000})',
      answer: "5,667",
    },
  ],
  note: "Equals LIABILITY of the changed items in the new year, and leaves out the same. One-time items of last year count again unless a change removes them. A decrease larger than last year's amount leaves a loss, limited as on the return, so enter last year's gain in `priorYearItems`.",
  calculate: ({ taxYear: year, filingStatus: status, ...given }, rules) => {
    const items = changedItems(given.priorYearItems, given.changes);
    return wholeDollarCell(totalTax(year, status, items, rules).amount);
  },
});

/**
 * Estimated total tax of the new year from last year's items and the changes you expect.
 *
 * @customfunction PROJECTEDTAX
 * @param taxYear The new tax year, such as 2025, or the last date of its fiscal year.
 * @param filingStatus Single (S), married filing jointly (MFJ) or separately (MFS), head of household (HOH), or qualifying surviving spouse (QSS).
 * @param priorYearItems Last year's rows of label and amount, as LIABILITY takes them. Last year's total tax is not used.
 * @param [changes] Rows of label and change: dollars such as -5000, or a percent typed as text such as "5%". Blank is no change.
 * @returns Whole dollars.
 */
export function projectedTax(
  taxYear: unknown,
  filingStatus: unknown,
  priorYearItems: unknown[][],
  changes?: unknown[][]
): unknown;
export function projectedTax(...cells: unknown[]): unknown {
  return PROJECTEDTAX.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const totalTaxFunctions = { LIABILITY, LIABILITYLINES, PAYMENTSTOTAL, PROJECTEDTAX };
