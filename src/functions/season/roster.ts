import { unread } from "../arguments/argumentKind";
import { clientList } from "../arguments/clientList";
import { date } from "../arguments/date";
import { assumedRate } from "../arguments/percent";
import { taxYear } from "../arguments/taxYear";
import { BLANK } from "../cells/answerCell";
import { cellValue, isBlankOrZero } from "../cells/cellValue";
import { tableFunction } from "../worksheetFunction";
import { ROSTER_HEADINGS, rosterRow, rosterTables } from "./rosterRow";

const ROSTER = tableFunction({
  arguments: {
    clientList,
    taxYear: unread(taxYear),
    asOf: unread(date),
    assumedRate: unread(assumedRate),
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
  ],
  note: "A blank row stays blank, and a cell that cannot be calculated shows its own error. The page on client list headings lists the headings that are read.",
  calculate: ({ clientList: clients, ...list }, rules) => [
    [...ROSTER_HEADINGS],
    ...clients.map((row) => {
      if (row === undefined) return ROSTER_HEADINGS.map(() => BLANK);
      const cell = (name: string): unknown => {
        if (name === "asOf" || name === "assumedRate") return list[name];
        const own = row(name as Parameters<typeof row>[0]);
        const isOfList = name === "taxYear" && isBlankOrZero(cellValue(own));
        return isOfList ? list.taxYear : own;
      };
      return rosterRow(cell, rules);
    }),
  ],
});

/**
 * Table with one row per client: due dates, balance due, suggested payment, penalties and interest, status, issues.
 *
 * @customfunction ROSTER
 * @param clientList A row of headings, then one row per client. Total tax and payments are required; the help lists the headings.
 * @param taxYear Tax year of the list, such as 2025. A tax year column in the list is used instead.
 * @param asOf As-of date. Anything that happened later is ignored.
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @returns {any[][]} A row of headings, then one row per client. Fills several cells; not for use inside an Excel table.
 */
export function roster(
  clientList: unknown[][],
  taxYear: unknown,
  asOf: unknown,
  assumedRate?: unknown
): unknown[][];
export function roster(...cells: unknown[]): unknown[][] {
  return ROSTER.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const rosterFunctions = { ROSTER };
