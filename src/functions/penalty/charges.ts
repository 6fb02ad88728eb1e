import { cleanHistoryRule } from "../../calculation/penalty/cleanHistoryRule";
import { charges as chargesOf } from "../../calculation/penalty/charges";
import { INTEREST_OUT_OF_COUNTRY, POSTPONEMENT_IN_WEEKEND } from "../arguments/openQuestions";
import {
  BEFORE_NOTICE,
  chargesInput,
  chargesInputOf,
  chargesTables,
} from "../arguments/chargesInput";
import { yesNo } from "../arguments/yesNo";
import { moneyCell } from "../cells/answerCell";
import { rowFunction, tableFunction } from "../worksheetFunction";
import { chargeTable } from "./chargeTable";
import { reliefRows } from "./reliefRows";

const LAW = ["IRC sections 6601, 6621, 6622 and 6651", "Regulations section 301.6651-1"];
const NOTE = `${BEFORE_NOTICE} ${INTEREST_OUT_OF_COUNTRY} ${POSTPONEMENT_IN_WEEKEND}`;

const CHARGES = rowFunction({
  arguments: chargesInput,
  tables: chargesTables,
  law: LAW,
  examples: [
    {
      formula: '=EXT.CHARGES(2025,20000,18500,"10/15/2026","10/15/2026","yes")',
      answer: "50.34",
      remark: "interest only, because 90% was paid on time",
    },
  ],
  note: NOTE,
  calculate: (given, rules) => moneyCell(chargesOf(chargesInputOf(given), rules).total),
});

/**
 * Failure-to-file penalty, failure-to-pay penalty and interest on a return filed or paid late; an estimate.
 *
 * @customfunction CHARGES
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param totalTax Total tax on the return, in dollars.
 * @param paidOnTime Total paid by the payment due date: withholding, estimated tax payments, credits and payment with the request.
 * @param paidOn Date the remaining balance is paid.
 * @param filedOn Date the return is filed.
 * @param [validExtension] Yes if a valid request was made on time; blank is no.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @param [agreementOn] Date the IRS accepts an installment agreement; used only if the return is filed on time.
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} Dollars and cents; 0 if there are no penalties or interest.
 */
export function charges(
  taxYear: unknown[][],
  totalTax: unknown[][],
  paidOnTime: unknown[][],
  paidOn: unknown[][],
  filedOn: unknown[][],
  validExtension?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  assumedRate?: unknown[][],
  agreementOn?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][];
export function charges(...cells: unknown[]): unknown[][] {
  return CHARGES.answer(cells);
}

const CHARGELINES = tableFunction({
  arguments: { ...chargesInput, cleanHistory: yesNo },
  tables: [...chargesTables, "cleanHistoryRelief"],
  law: [...LAW, "Internal Revenue Manual, section 20.1.1.3.3.2.1"],
  examples: [
    {
      formula: '=EXT.CHARGELINES(2025,20000,18500,"10/15/2026","10/15/2026","yes")',
      answer: "No failure-to-pay penalty: 90% paid, reasonable cause",
    },
    {
      formula: '=EXT.CHARGELINES(2025,20000,10000,"6/10/2026","6/10/2026",,,,,,,,"yes")',
      answer: "Likely relief: failure-to-file penalty",
    },
  ],
  note: `${NOTE} With a clean history, rows below the total show what first-time abatement or the automatic exemption would likely remove and what would remain. Relief is never certain: see FIRSTTIME. CHARGES, WHATIF and EFFECTIVERATE never subtract it.`,
  calculate: (given, rules) => {
    const charged = chargesOf(chargesInputOf(given), rules);
    if (!given.cleanHistory) return chargeTable(charged);
    const rule = cleanHistoryRule(given.taxYear, rules);
    return [...chargeTable(charged), ...reliefRows(charged, rule)];
  },
});

/**
 * Table of the CHARGES calculation line by line; the amounts add up to CHARGES to the cent.
 *
 * @customfunction CHARGELINES
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year.
 * @param totalTax Total tax on the return, in dollars.
 * @param paidOnTime Total paid by the payment due date: withholding, estimated tax payments, credits and payment with the request.
 * @param paidOn Date the remaining balance is paid.
 * @param filedOn Date the return is filed.
 * @param [validExtension] Yes if a valid request was made on time; blank is no.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @param [agreementOn] Date the IRS accepts an installment agreement; used only if the return is filed on time.
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @param [cleanHistory] Yes to add, below the total, the relief that is likely after three years without penalties; blank is no.
 * @returns {any[][]} A row of headings, then one row per step. Fills several cells; not for use inside an Excel table.
 */
export function chargeLines(
  taxYear: unknown,
  totalTax: unknown,
  paidOnTime: unknown,
  paidOn: unknown,
  filedOn: unknown,
  validExtension?: unknown,
  state?: unknown,
  filerType?: unknown,
  assumedRate?: unknown,
  agreementOn?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown,
  cleanHistory?: unknown
): unknown[][];
export function chargeLines(...cells: unknown[]): unknown[][] {
  return CHARGELINES.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const chargesFunctions = { CHARGES, CHARGELINES };
