import { InputError } from "../inputError";
import { isEmptyCell } from "./cells";
import { EMPTY, type AnswerTable } from "./results";
import { rosterColumns, type RosterField } from "./rosterHeadings";
import { ROSTER_ANSWERS, rosterRow } from "./rosterRow";
import { answerTable, singles } from "./rows";

/** The rows of a block, however the host hands it over. */
function rowsOf(grid: unknown): readonly (readonly unknown[])[] {
  const rows = Array.isArray(grid) ? (grid as readonly unknown[]) : [grid];
  return rows.map((row) => (Array.isArray(row) ? (row as readonly unknown[]) : [row]));
}

/**
 * The whole client list in one formula: a row a client with its dates, shortfall, suggested payment, charges to the planned day, way to ask, stage, days left and findings. Spills; put it outside tables.
 *
 * @customfunction ROSTER
 * @param grid The client list, its first row the headings in any order and case; total tax and payments are needed, unknown headings are left alone. The help lists the headings.
 * @param taxYear Tax year of the list such as 2025; a tax year column in the list goes before it.
 * @param asOf The day looked at.
 * @param [assumedRate] Interest rate for days beyond the last published quarter: a fraction a year such as 7%, or latest.
 * @returns {any[][]} A header row, then a row for each row of the list; an empty row stays empty, and a cell that cannot be answered holds its own error.
 * @throws `#VALUE!` for headings that are missing or there twice, and in the cells of a row that cannot be read; `#N/A` in cells whose figure is not held.
 * @see The functions of the same names: DUE, EXTENDED, SHORTFALL, SUGGEST, CHARGES, METHOD, STAGE, DAYSLEFT, NEXTDATE, ISSUECOUNT
 * @example =EXT.ROSTER({"Client","Total tax","Payments";"Alder",20000,15000},2025,"2026-04-10") has 5,000.00 as the shortfall
 */
export function roster(
  grid: unknown[][],
  taxYear: unknown,
  asOf: unknown,
  assumedRate?: unknown
): unknown[][] {
  return answerTable(ROSTER_ANSWERS, (): AnswerTable => {
    const list = singles({ taxYear, asOf, assumedRate });
    const [headings, ...rows] = rowsOf(grid);
    if (!headings || rows.length === 0)
      throw new InputError("grid", "has no row below its headings; give the whole client list");
    const columns = rosterColumns(headings);
    return rows.map((row) => {
      const cell = (field: RosterField): unknown => {
        const index = columns.get(field);
        return index === undefined ? null : row[index];
      };
      const isEmpty = [...columns.values()].every(
        (index) => isEmptyCell(row[index]) || row[index] === 0
      );
      return isEmpty ? ROSTER_ANSWERS.map(() => EMPTY) : rosterRow(cell, list);
    });
  });
}
