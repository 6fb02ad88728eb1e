import { ledger as ledgerOf } from "../../calculation/account/ledger";
import { cleanHistoryRule } from "../../calculation/penalty/cleanHistoryRule";
import { entryOn } from "../../rules/datedTable";
import { chargesTables, lateness } from "../arguments/chargesInput";
import { datesOf } from "../arguments/client";
import { dateAfterYear } from "../arguments/date";
import { dollars } from "../arguments/dollars";
import { INTEREST_OUT_OF_COUNTRY, POSTPONEMENT_IN_WEEKEND } from "../arguments/openQuestions";
import { payments } from "../arguments/ranges";
import { taxYear } from "../arguments/taxYear";
import { yesNo } from "../arguments/yesNo";
import { tableFunction } from "../worksheetFunction";
import { notices, requireAfterFiling } from "./afterFiling";
import { ledgerReliefRows } from "./ledgerReliefRows";
import { ledgerTable } from "./ledgerTable";

const LEDGER = tableFunction({
  arguments: {
    taxYear,
    totalTax: dollars,
    payments,
    filedOn: dateAfterYear,
    ...lateness,
    ...notices,
    cleanHistory: yesNo,
  },
  tables: [
    ...chargesTables,
    "orderOfPayments",
    "noticeAndDemand",
    "levyNotice",
    "cleanHistoryRelief",
  ],
  law: [
    "IRC sections 6601 and 6651(b), (d), (h)",
    "Regulations section 301.6601-1(f)",
    "Rev. Proc. 2002-26, section 3",
    "Internal Revenue Manual, section 20.1.1.3.3.2.1",
  ],
  examples: [
    {
      formula: '=EXT.LEDGER(2025,20000,{"4/15/2026",15000;"10/15/2026",5000},"10/15/2026","yes")',
      answer: "317.81",
      remark: "penalties and interest to the date of the last payment",
    },
    {
      formula:
        '=EXT.LEDGER(2025,20000,{"4/15/2026",15000;"11/23/2026",5120},"4/15/2026",,,,,,,,"11/2/2026")',
      answer: "Notice and demand, pay by 11/23/2026",
      remark: "paid by that date, so interest stops on 11/2/2026",
    },
  ],
  note: `The last row has the penalties and interest of the whole period. An amount paid beyond the tax pays the failure-to-pay penalty, then the failure-to-file penalty, then interest. A notice bills what is unpaid on its date. Interest stops on that date for an amount paid within 21 days, or 10 business days if the notice bills $100,000 or more. On what is paid later, interest goes on, and it begins on the failure-to-pay penalty that the notice bills. A month that begins more than 10 days after a levy notice has a rate of 1%, even under an agreement. The agreement is assumed to stay in effect. Later notices and a demand for immediate payment are not calculated. With a clean history, rows below show what first-time abatement or the automatic exemption would likely remove and what would remain. Relief is never certain: see FIRSTTIME. ${INTEREST_OUT_OF_COUNTRY} ${POSTPONEMENT_IN_WEEKEND}`,
  calculate: (given, rules) => {
    const dates = datesOf(given);
    requireAfterFiling(given, dates);
    const rows = ledgerOf({ ...given, dates }, rules);
    const last = rows.at(-1);
    if (!given.cleanHistory || !last) return ledgerTable(rows);
    const { source } = entryOn(rules.failureToPay, last.date);
    const rule = cleanHistoryRule(given.taxYear, rules);
    return [...ledgerTable(rows), ...ledgerReliefRows(last, rule, source)];
  },
});

/**
 * Table of a client's partial payments and deadlines, with unpaid tax, penalties and interest to date.
 *
 * @customfunction LEDGER
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year.
 * @param totalTax Total tax on the return, in dollars.
 * @param payments All payments as rows of date and amount, in any order. Withholding counts as paid on the payment due date.
 * @param filedOn Date the return is filed.
 * @param [validExtension] Yes if a valid request was made on time; blank is no.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @param [agreementOn] Date the IRS accepts an installment agreement; used only if the return is filed on time.
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @param [noticeOn] Date of the first IRS notice of the balance due (notice and demand), such as CP14.
 * @param [levyNoticeOn] Date of the notice of intent to levy, such as CP504, LT11 or Letter 1058.
 * @param [cleanHistory] Yes to add, below the last row, the relief that is likely after three years without penalties; blank is no.
 * @returns {any[][]} A row of headings, then one row per event. Fills several cells; not for use inside an Excel table.
 */
export function ledger(
  taxYear: unknown,
  totalTax: unknown,
  payments: unknown[][],
  filedOn: unknown,
  validExtension?: unknown,
  state?: unknown,
  filerType?: unknown,
  assumedRate?: unknown,
  agreementOn?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown,
  noticeOn?: unknown,
  levyNoticeOn?: unknown,
  cleanHistory?: unknown
): unknown[][];
export function ledger(...cells: unknown[]): unknown[][] {
  return LEDGER.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const ledgerFunctions = { LEDGER };
