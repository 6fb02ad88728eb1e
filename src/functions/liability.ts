import { projectedTax } from "../calculation/liability/projectedTax";
import { totalPayments } from "../calculation/liability/totalPayments";
import { totalTax, type TotalTax } from "../calculation/liability/totalTax";
import { toCents } from "../money/dollars";
import { rulebook } from "../rules/rulebook";
import { changes as readChanges } from "./changeArguments";
import { taxYear as readTaxYear } from "./dayArguments";
import { returnItems } from "./itemArguments";
import { money } from "./moneyArguments";
import { citation, EMPTY, moneyCell, wholeDollarCell } from "./results";
import { answered, answerTable, singles } from "./rows";
import { filingStatus } from "./wordArguments";

const LEFT_OUT =
  "An estimate, not a return. Left out: gains at 25 and 28%, loss limits on rentals and partnerships, self-employment and 3.8% tax on partnership income, several businesses, foreign income, education and energy credits unless given as credits, the refundable child credit, health premiums, the 0.5% floor under gifts of 2026, the tax on children's investment income, farm averaging.";

function estimate(taxYear: unknown, status: unknown, items: unknown): TotalTax {
  const cells = singles({ taxYear, status });
  const year = readTaxYear("taxYear", cells.taxYear);
  const who = filingStatus("status", cells.status);
  return totalTax(year, who, returnItems("items", items), rulebook);
}

/**
 * Estimate of total tax, line 4 of the request, from what is known of the return. A good-faith estimate, not a return.
 *
 * @customfunction LIABILITY
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year.
 * @param status Filing status: single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS.
 * @param items Rows of label and amount, such as wages, interest, business profit, children under 17; in any order, repeated labels add up.
 * @returns Whole dollars.
 * @throws `#VALUE!` for a label nobody knows, naming the nearest and the row, or an amount that cannot be read; `#N/A` for a year whose figures are not held.
 * @see Form 1040, lines 1 to 24
 * @example =EXT.LIABILITY(2025,"single",{"wages",75750}) is 8,120.00
 */
export function liability(taxYear: unknown, status: unknown, items: unknown[][]): unknown {
  return answered(() => wholeDollarCell(estimate(taxYear, status, items).amount));
}

/**
 * The working of LIABILITY from income to total tax, line by line with the law of its figures, and what it leaves out. Spills; put it outside tables.
 *
 * @customfunction LIABILITYLINES
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year.
 * @param status Filing status: single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS.
 * @param items Rows of label and amount, such as wages, interest, business profit, children under 17; in any order, repeated labels add up.
 * @returns {any[][]} A header row, then a row a line; the last row says what is left out.
 * @throws `#VALUE!` for a label nobody knows, naming the nearest and the row, or an amount that cannot be read; `#N/A` for a year whose figures are not held.
 * @see Form 1040, lines 1 to 24
 * @example =EXT.LIABILITYLINES(2025,"single",{"wages",75750}) shows taxable income of 60,000 and total tax of 8,120
 */
export function liabilityLines(taxYear: unknown, status: unknown, items: unknown[][]): unknown[][] {
  return answerTable(["What", "Dollars", "Source"], () => {
    const rows = estimate(taxYear, status, items).lines.map(({ what, amount, source }) => [
      what,
      wholeDollarCell(amount),
      source ? citation(source) : EMPTY,
    ]);
    return [...rows, [LEFT_OUT, EMPTY, EMPTY]];
  });
}

/**
 * Payments for line 5 of the request from the same rows: withholding, estimated payments, overpayment applied, refundable credits. Never what is sent with the request.
 *
 * @customfunction PAYMENTSTOTAL
 * @param items Rows of label and amount; labels that are no payments are passed over.
 * @returns Dollars and cents.
 * @throws `#VALUE!` for a label nobody knows, naming the nearest and the row, or an amount that cannot be read.
 * @see Form 4868, line 5
 * @example =EXT.PAYMENTSTOTAL({"withholding",9000;"1040-ES",2000.50;"wages",80000}) is 11,000.50
 */
export function paymentsTotal(items: unknown[][]): unknown {
  return answered(() => moneyCell(toCents(totalPayments(returnItems("items", items)))));
}

/**
 * Total tax projected from last year's total tax and a few changes: a documented basis for line 4 when nothing better is there.
 *
 * @customfunction PROJECTEDTAX
 * @param taxYear The year to project, such as 2025, or the last day of a fiscal year.
 * @param status Filing status: single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS.
 * @param priorYearTax Dollars of total tax on last year's return.
 * @param priorYearTaxableIncome Dollars of taxable income on last year's return.
 * @param [changes] Rows of label and difference from last year, falls negative: wages, interest, business profit, long-term gain, deductions, children under 17.
 * @returns Whole dollars.
 * @throws `#VALUE!` for an argument that cannot be read, naming the row; `#N/A` where either year's figures are not held.
 * @see 26 CFR 1.6081-4(b); Form 4868, line 4
 * @example =EXT.PROJECTEDTAX(2025,"single",8341,60000) is 7,949.00
 */
export function project(
  taxYear: unknown,
  status: unknown,
  priorYearTax: unknown,
  priorYearTaxableIncome: unknown,
  changes?: unknown[][]
): unknown {
  return answered(() => {
    const cells = singles({ taxYear, status, priorYearTax, priorYearTaxableIncome });
    const input = {
      taxYear: readTaxYear("taxYear", cells.taxYear),
      status: filingStatus("status", cells.status),
      priorYearTax: money("priorYearTax", cells.priorYearTax),
      priorYearTaxableIncome: money("priorYearTaxableIncome", cells.priorYearTaxableIncome),
      ...readChanges("changes", changes),
    };
    return wholeDollarCell(projectedTax(input, rulebook));
  });
}
