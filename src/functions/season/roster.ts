import { unread } from "../arguments/argumentKind";
import { answerColumns } from "../arguments/answerColumns";
import { clientList } from "../arguments/clientList";
import { date } from "../arguments/date";
import { ownHeadings } from "../arguments/ownHeadings";
import { assumedRate } from "../arguments/percent";
import { taxYear } from "../arguments/taxYear";
import { tableFunction } from "../worksheetFunction";
import { rosterTables } from "./rosterClient";
import { DEFAULT_HEADINGS, ROSTER_HEADINGS } from "./rosterColumns";
import { rosterTable } from "./rosterTable";

/** The arguments of ROSTER and ROSTERROWS after the list. */
export const ofTheList = {
  taxYear: unread(taxYear),
  asOf: unread(date),
  assumedRate: unread(assumedRate),
  columns: answerColumns(ROSTER_HEADINGS, DEFAULT_HEADINGS),
  headings: ownHeadings,
} as const;

const ROSTER = tableFunction({
  arguments: {
    clientList,
    ...ofTheList,
  },
  tables: rosterTables,
  law: [
    "The law of DUE, EXTENDED, SHORTFALL, SUGGEST, CHARGES, METHOD, STAGE, NEXTDATE and ISSUES",
  ],
  examples: [
    {
      formula:
        '=EXT.ROSTER({"Client","Total tax","Payments";"Alder",20000,15000},2025,"4/10/2026")',
      answer: "5,000.00",
      remark: "balance due",
    },
    {
      formula:
        '=EXT.ROSTER({"Name","ST","Est. total tax","W/H","ES paid";"Cress","Maine","$12,400",6000,4000},2025,"4/10/2026",,{"Client","Balance due","Status"})',
      answer: "2,400.00",
      remark: "withholding and estimated tax payments are added",
    },
  ],
  note: "A blank row stays blank, and so does a row whose name begins with Total. 90% paid counts what is paid by the payment due date. If the list has a target or a cushion, the heading of the suggested payment says so. An answer that cannot be calculated shows its own error, and the column Unreadable names the cells of the row that cannot be read. ROSTERHEADINGS shows how each heading is read.",
  calculate: ({ clientList: list, columns, headings, ...shared }, rules) => {
    const answers = rosterTable("clientList", list, { columns, headings }, shared, rules);
    return [[...answers.headings], ...answers.rows];
  },
});

/**
 * Table with one row per client: due dates, balance due, suggested payment, penalties and interest, status, issues.
 *
 * @customfunction ROSTER
 * @param clientList Your list: a row of headings, then one row per client. It needs total tax and payments, or parts of the payments.
 * @param taxYear Tax year of the list, such as 2025. A tax year column in the list is used instead.
 * @param asOf As-of date. Anything that happened later is ignored.
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @param [columns] Headings of the answers you want, in their order; blank is the usual ones.
 * @param [headings] Two columns: a heading of your list, and the heading that it means or "not used".
 * @returns {any[][]} A row of headings, then one row per client. Fills several cells; not for use inside an Excel table.
 */
export function roster(
  clientList: unknown[][],
  taxYear: unknown,
  asOf: unknown,
  assumedRate?: unknown,
  columns?: unknown[][],
  headings?: unknown[][]
): unknown[][];
export function roster(...cells: unknown[]): unknown[][] {
  return ROSTER.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const rosterFunctions = { ROSTER };
