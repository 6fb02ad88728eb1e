import { HorizontalAlign, type IRange, type IStyleData, WrapStrategy } from "@univerjs/core";

/** A cell of a sheet as it is printed. */
export interface SheetCell {
  /** What the grid shows; empty for an empty cell. */
  readonly text: string;
  readonly isNumber: boolean;
  readonly style: IStyleData | undefined;
}

/** A sheet to print. Rows and columns are counted from 0. */
export interface PrintableSheet {
  readonly rowCount: number;
  readonly columnCount: number;
  /** Rows and columns that stay in view in the grid and are repeated in print. */
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly merged: readonly IRange[];
  /** In pixels; 0 for a hidden column. */
  width(column: number): number;
  isRowShown(row: number): boolean;
  cell(row: number, column: number): SheetCell;
}

/** A cell of a printed table. */
export interface PrintedCell extends SheetCell {
  readonly columns: number;
  readonly rows: number;
}

/** A part of a sheet that is as wide as a page. */
export interface PrintedTable {
  /** The widths of its columns, in pixels. */
  readonly widths: readonly number[];
  readonly headings: readonly (readonly PrintedCell[])[];
  readonly rows: readonly (readonly PrintedCell[])[];
}

/** The width of a landscape Letter page within its margins, in pixels. */
export const PAGE_WIDTH = 960;
/** A sheet that would have to be made smaller than this is printed in several tables. */
const LEAST_SCALE = 0.6;
const WIDEST_TABLE = PAGE_WIDTH / LEAST_SCALE;
/** About the width of a character of the default font, in pixels. */
const CHARACTER_WIDTH = 6.5;

const range = (from: number, to: number): number[] =>
  Array.from({ length: Math.max(0, to - from) }, (_one, index) => from + index);

/** Groups of columns, each as wide as a page at most, all with the frozen columns first. */
function columnGroups(sheet: PrintableSheet): number[][] {
  const shown = range(0, sheet.columnCount).filter((column) => sheet.width(column) > 0);
  const widthOf = (columns: readonly number[]): number =>
    columns.reduce((sum, column) => sum + sheet.width(column), 0);
  const frozen = shown.filter((column) => column < sheet.frozenColumns);
  const repeated = widthOf(frozen) <= WIDEST_TABLE / 2 ? frozen : [];
  const groups: number[][] = [];
  let group: number[] = [];
  for (const column of shown) {
    if (group.length > 0 && widthOf(group) + sheet.width(column) > WIDEST_TABLE) {
      groups.push(group);
      group = [...repeated];
    }
    group.push(column);
  }
  return [...groups, group];
}

/** Cells covered by a merged cell, and merged cells by their first cell. */
function mergedCells(sheet: PrintableSheet) {
  const covered = new Set<string>();
  const firsts = new Map<string, IRange>();
  for (const merge of sheet.merged) {
    firsts.set(`${merge.startRow},${merge.startColumn}`, merge);
    for (const row of range(merge.startRow, merge.endRow + 1))
      for (const column of range(merge.startColumn, merge.endColumn + 1))
        if (row !== merge.startRow || column !== merge.startColumn) covered.add(`${row},${column}`);
  }
  return { covered, firsts };
}

function isLeft({ isNumber, style }: SheetCell): boolean {
  const across = style?.ht ?? HorizontalAlign.UNSPECIFIED;
  return !isNumber && [HorizontalAlign.UNSPECIFIED, HorizontalAlign.LEFT].includes(across);
}

/** How many columns a text fills: the empty cells after it, as far as it needs them. */
function columnsOfText(
  sheet: PrintableSheet,
  cell: SheetCell,
  row: number,
  columns: readonly number[],
  isTaken: (column: number) => boolean
): number {
  if (cell.text === "" || cell.style?.tb === WrapStrategy.WRAP || !isLeft(cell)) return 1;
  const [first = 0, ...next] = columns;
  const needed = cell.text.length * CHARACTER_WIDTH * ((cell.style?.fs ?? 10) / 10);
  let width = sheet.width(first);
  let count = 1;
  for (const column of next) {
    if (width >= needed || isTaken(column) || sheet.cell(row, column).text !== "") break;
    width += sheet.width(column);
    count += 1;
  }
  return count;
}

function printedRow(
  sheet: PrintableSheet,
  row: number,
  columns: readonly number[],
  merges: ReturnType<typeof mergedCells>
): PrintedCell[] {
  const { covered, firsts } = merges;
  const isTaken = (column: number): boolean =>
    covered.has(`${row},${column}`) || firsts.has(`${row},${column}`);
  const cells: PrintedCell[] = [];
  for (let index = 0; index < columns.length;) {
    const column = columns[index] ?? 0;
    if (covered.has(`${row},${column}`)) {
      index += 1;
      continue;
    }
    const cell = sheet.cell(row, column);
    const merge = firsts.get(`${row},${column}`);
    const rest = columns.slice(index);
    const count = merge
      ? rest.filter((one) => one <= merge.endColumn).length
      : columnsOfText(sheet, cell, row, rest, isTaken);
    const rows = merge
      ? range(row, merge.endRow + 1).filter((one) => sheet.isRowShown(one))
      : [row];
    cells.push({ ...cell, columns: count, rows: rows.length });
    index += count;
  }
  return cells;
}

/**
 * The tables that print a sheet: one if it fits the width of a page, otherwise several with the frozen columns repeated. The frozen rows
 * are headings.
 *
 * @param sheet - The sheet.
 * @returns The tables.
 */
export function printedTables(sheet: PrintableSheet): PrintedTable[] {
  const merges = mergedCells(sheet);
  const rows = range(0, sheet.rowCount).filter((row) => sheet.isRowShown(row));
  return columnGroups(sheet).map((columns) => {
    const printed = (wanted: readonly number[]): PrintedCell[][] =>
      wanted.map((row) => printedRow(sheet, row, columns, merges));
    return {
      widths: columns.map((column) => sheet.width(column)),
      headings: printed(rows.filter((row) => row < sheet.frozenRows)),
      rows: printed(rows.filter((row) => row >= sheet.frozenRows)),
    };
  });
}
