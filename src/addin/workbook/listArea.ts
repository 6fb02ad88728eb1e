import { headingsRead } from "../../functions/arguments/readHeadings";
import { hasNoEntry } from "./entryCell";
import { NotDone, type SelectedList } from "./workbookHost";

/** The most rows of a list: a host needs minutes for more. */
export const MOST_LIST_ROWS = 50_000;
/** Fewer filled cells in a row do not make it a row of headings, nor a row beyond a blank one a row of the list. */
const LEAST_CELLS = 2;

/** The cells of a sheet in which a list is looked for. */
export interface SheetCells {
  readonly sheet: string;
  /** The first row, counted from 1. */
  readonly top: number;
  /** The first column, counted from 1. */
  readonly left: number;
  readonly values: readonly (readonly unknown[])[];
  /** Formulas, or what the cell contains if it has none. */
  readonly formulas: readonly (readonly unknown[])[];
}

/** Rows and columns of an area, counted from 0, the last ones included. */
interface Area {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

type Row = readonly unknown[];

const isFilled = (cell: unknown): boolean => !hasNoEntry(cell);

/** A formula as it is, and empty text for any other content. */
const formulaOnly = (cell: unknown): string =>
  typeof cell === "string" && cell.startsWith("=") ? cell : "";

/**
 * Refuses a list that is too long, and says how to split it.
 *
 * @param rows - The rows below the headings.
 * @throws NotDone for more than 50,000 rows.
 */
export function refuseTooManyRows(rows: number): void {
  if (rows <= MOST_LIST_ROWS) return;
  const most = MOST_LIST_ROWS.toLocaleString("en-US");
  throw new NotDone(
    `The list has ${rows.toLocaleString("en-US")} rows. Put it on several sheets with ${most} rows or fewer, each with the headings, and select one of them.`
  );
}

/** The filled cells around a cell. A single blank row is part of them if the row beyond it has two filled cells or more. */
function areaAround(values: readonly Row[], row: number, column: number): Area {
  const filledIn = (line: number, from: number, to: number): number =>
    (values[line] ?? []).slice(Math.max(0, from), to + 1).filter(isFilled).length;
  const isColumnFilled = (index: number, { top, bottom }: Area): boolean =>
    values.slice(Math.max(0, top - 1), bottom + 2).some((line) => isFilled(line[index]));
  const stepTo = (line: number, beyond: number, { left, right }: Area): number => {
    if (filledIn(line, left - 1, right + 1) > 0) return line;
    return filledIn(beyond, left, right) >= LEAST_CELLS ? beyond : -1;
  };
  let area: Area = { top: row, bottom: row, left: column, right: column };
  for (let before: Area | undefined; before !== area;) {
    before = area;
    const up = stepTo(area.top - 1, area.top - 2, area);
    if (up >= 0) area = { ...area, top: up };
    const down = stepTo(area.bottom + 1, area.bottom + 2, area);
    if (down >= 0) area = { ...area, bottom: down };
    if (area.left > 0 && isColumnFilled(area.left - 1, area))
      area = { ...area, left: area.left - 1 };
    if (isColumnFilled(area.right + 1, area)) area = { ...area, right: area.right + 1 };
  }
  return area;
}

function textsIn(line: Row): number {
  return line.filter((cell) => typeof cell === "string" && cell.trim() !== "").length;
}

/**
 * The row of the headings: the last one down to the selected row that has two headings of a client list, otherwise the first one below;
 * if there is none, the first row with two texts.
 */
function headingLine(lines: readonly Row[], selected: number): number {
  const isRead = (line: Row): boolean => headingsRead(line) >= LEAST_CELLS;
  const above = lines.slice(0, selected + 1).findLastIndex(isRead);
  if (above >= 0) return above;
  const read = lines.findIndex(isRead);
  return read >= 0 ? read : lines.findIndex((line) => textsIn(line) >= LEAST_CELLS);
}

/** The rows of a list: from the headings to the last filled row before the headings of another list. */
function endOf(lines: readonly Row[], heading: number): number {
  const next = lines.findIndex(
    (line, index) => index > heading && headingsRead(line) >= LEAST_CELLS
  );
  const end = next < 0 ? lines.length : next;
  return lines.slice(0, end).findLastIndex((line) => line.some(isFilled)) + 1;
}

/**
 * The list around the selected cell of a sheet without tables.
 *
 * @param cells - The filled cells of the sheet.
 * @param row - The row of the selected cell, counted from 1.
 * @param column - Its column, counted from 1.
 * @throws NotDone when there is no list, or it has no headings or too many rows.
 */
export function listAround(cells: SheetCells, row: number, column: number): SelectedList {
  const { sheet, top, left, values, formulas } = cells;
  const area = areaAround(values, row - top, column - left);
  const lines = values
    .slice(area.top, area.bottom + 1)
    .map((line) => line.slice(area.left, area.right + 1));
  if (!lines.some((line) => line.some(isFilled)))
    throw new NotDone("The selected cell is not in a list. Select a cell of your client list.");
  const selected = row - top - area.top;
  const heading = headingLine(lines, selected);
  if (heading < 0)
    throw new NotDone(
      "The list has no headings. Enter headings such as Client, Total tax and Total payments in its first row."
    );
  const headings = lines[heading] ?? [];
  const [from, to] = [headings.findIndex(isFilled), headings.findLastIndex(isFilled) + 1];
  const end = endOf(lines, heading);
  refuseTooManyRows(end - heading - 1);
  if (end - heading < LEAST_CELLS)
    throw new NotDone("The list has no row below its headings. Enter your first client.");
  const cut = (all: readonly Row[]): Row[] =>
    all
      .slice(area.top + heading + 1, area.top + end)
      .map((line) => line.slice(area.left + from, area.left + to));
  const selectedRow = selected - heading - 1;
  return {
    sheet,
    headingRow: top + area.top + heading,
    firstColumn: left + area.left + from,
    headings: headings.slice(from, to),
    rows: cut(values),
    formulas: cut(formulas).map((line) => line.map(formulaOnly)),
    selectedRow: selectedRow >= 0 && selectedRow < end - heading - 1 ? selectedRow : undefined,
  };
}

/**
 * The list in a table.
 *
 * @param table - The name of the table.
 * @param cells - The cells of the table, with its headings in the first row and without a row of totals.
 * @param row - The row of the selected cell, counted from 1.
 */
export function listInTable(table: string, cells: SheetCells, row: number): SelectedList {
  const { sheet, top, left, values, formulas } = cells;
  const selectedRow = row - top - 1;
  return {
    sheet,
    table,
    headingRow: top,
    firstColumn: left,
    headings: values[0] ?? [],
    rows: values.slice(1),
    formulas: formulas.slice(1).map((line) => line.map(formulaOnly)),
    selectedRow: selectedRow >= 0 && selectedRow < values.length - 1 ? selectedRow : undefined,
  };
}
