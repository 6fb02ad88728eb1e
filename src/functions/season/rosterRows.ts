import { listHeadings, listRows } from "../arguments/clientList";
import { InputError } from "../cells/inputError";
import { tableFunction } from "../worksheetFunction";
import { ofTheList } from "./roster";
import { rosterTables } from "./rosterClient";
import { rosterTable } from "./rosterTable";

const ROSTERROWS = tableFunction({
  arguments: {
    listHeadings,
    rows: listRows,
    ...ofTheList,
  },
  tables: rosterTables,
  law: ["The law of ROSTER"],
  examples: [
    {
      formula:
        '=EXT.ROSTERROWS({"Client","Total tax","Payments"},{"Alder",20000,15000},2025,"4/10/2026",,"Balance due")',
      answer: "5,000.00",
      remark: "one client and one answer: a single cell, also inside an Excel table",
    },
  ],
  note: "The answers are those of ROSTER. With one row and one answer the formula fills a single cell, so it can be filled down beside a list or be a column of an Excel table, and an edit recalculates only the row of its client. A blank row stays blank.",
  calculate: ({ listHeadings: names, rows, columns, headings, ...shared }, rules) => {
    const width = rows[0]?.length ?? 0;
    if (width !== names.length)
      throw new InputError(
        "rows",
        `The columns differ in number: ${String(width)} here, ${String(names.length)} in listHeadings. Select the same columns.`
      );
    return rosterTable(
      "listHeadings",
      { headings: names, rows },
      { columns, headings },
      shared,
      rules
    ).rows;
  },
});

/**
 * Answers of ROSTER for one client or several, without a row of headings: one cell for one client and one answer.
 *
 * @customfunction ROSTERROWS
 * @param listHeadings The row of headings of your list. It needs total tax and payments, or parts of the payments.
 * @param rows One row or several rows of your list, with the same columns.
 * @param taxYear Tax year of the list, such as 2025. A tax year column in the list is used instead.
 * @param asOf As-of date. Anything that happened later is ignored.
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @param [columns] Headings of the answers you want, in their order; blank is the usual ones.
 * @param [headings] Two columns: a heading of your list, and the heading that it means or "not used".
 * @returns {any[][]} One row per client. Several answers fill several cells; use one answer inside an Excel table.
 */
export function rosterRows(
  listHeadings: unknown[][],
  rows: unknown[][],
  taxYear: unknown,
  asOf: unknown,
  assumedRate?: unknown,
  columns?: unknown[][],
  headings?: unknown[][]
): unknown[][];
export function rosterRows(...cells: unknown[]): unknown[][] {
  return ROSTERROWS.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const rosterRowFunctions = { ROSTERROWS };
