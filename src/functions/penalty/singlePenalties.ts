import { failureToFilePenalty } from "../../calculation/penalty/failureToFilePenalty";
import { failureToPayPenalty } from "../../calculation/penalty/failureToPayPenalty";
import { toCents } from "../../money/dollars";
import { optional } from "../arguments/argumentKind";
import { BEFORE_NOTICE } from "../arguments/chargesInput";
import { dateTables, datesOf, postponement, residence } from "../arguments/client";
import { date, dateAfterYear } from "../arguments/date";
import { dollars } from "../arguments/dollars";
import { taxYear } from "../arguments/taxYear";
import { yesNo } from "../arguments/yesNo";
import { moneyCell } from "../cells/answerCell";
import { rowFunction } from "../worksheetFunction";

const LATEFILE = rowFunction({
  arguments: {
    taxYear,
    unpaidTax: dollars,
    filedOn: dateAfterYear,
    validExtension: yesNo,
    ...residence,
    ...postponement,
  },
  tables: [...dateTables, "failureToFile", "failureToFileMinimum"],
  law: ["IRC section 6651(a)(1), (b)(1)"],
  examples: [
    { formula: '=EXT.LATEFILE(2025,2000,"5/20/2026")', answer: "200.00" },
    {
      formula: '=EXT.LATEFILE(2025,2000,"7/1/2026")',
      answer: "525.00",
      remark: "minimum penalty for a return more than 60 days late",
    },
  ],
  calculate: (given, rules) => {
    const { regular, extended } = datesOf(given);
    const input = {
      due: given.validExtension ? extended : regular,
      regular,
      filedOn: given.filedOn,
      unpaidTax: given.unpaidTax,
    };
    return moneyCell(toCents(failureToFilePenalty(input, rules).amount));
  },
});

/**
 * Failure-to-file penalty alone: 5% of unpaid tax per month or part of a month, up to 25%, with the 60-day minimum.
 *
 * @customfunction LATEFILE
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param unpaidTax Tax not paid by the payment due date, after credits, in dollars.
 * @param filedOn Date the return is filed.
 * @param [validExtension] Yes if a valid request was made on time; blank is no.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} Dollars and cents, not reduced by the failure-to-pay penalty for the same months. See CHARGES.
 */
export function lateFile(
  taxYear: unknown[][],
  unpaidTax: unknown[][],
  filedOn: unknown[][],
  validExtension?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][];
export function lateFile(...cells: unknown[]): unknown[][] {
  return LATEFILE.answer(cells);
}

const LATEPAY = rowFunction({
  arguments: {
    taxYear,
    unpaidTax: dollars,
    paidOn: dateAfterYear,
    ...residence,
    agreementOn: optional(date),
    ...postponement,
  },
  tables: [...dateTables, "failureToPay"],
  law: ["IRC section 6651(a)(2), (b)(2), (h)"],
  examples: [
    {
      formula: '=EXT.LATEPAY(2025,1000,"6/1/2026")',
      answer: "10.00",
      remark: "one month and part of another",
    },
  ],
  note: BEFORE_NOTICE,
  calculate: (given, rules) => {
    const input = {
      due: datesOf(given).regular,
      unpaidTax: given.unpaidTax,
      payments: [],
      through: given.paidOn,
      agreementOn: given.agreementOn,
    };
    return moneyCell(toCents(failureToPayPenalty(input, rules.failureToPay).amount));
  },
});

/**
 * Failure-to-pay penalty alone: 0.5% of unpaid tax per month or part of a month, up to 25%; without the 90% test.
 *
 * @customfunction LATEPAY
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param unpaidTax Tax not paid by the payment due date, in dollars.
 * @param paidOn Date the tax is paid.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [agreementOn] Date the IRS accepts an installment agreement; used only if the return is filed on time.
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} Dollars and cents.
 */
export function latePay(
  taxYear: unknown[][],
  unpaidTax: unknown[][],
  paidOn: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  agreementOn?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][];
export function latePay(...cells: unknown[]): unknown[][] {
  return LATEPAY.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const singlePenalties = { LATEFILE, LATEPAY };
