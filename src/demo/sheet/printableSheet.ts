import { CellValueType } from "@univerjs/core";
import type { Grid } from "./grid";
import { filledBlocks, openWorkbook } from "./gridCells";
import type { PrintableSheet, SheetCell } from "./printedTables";

const EMPTY: SheetCell = { text: "", isNumber: false, style: undefined };
/** A text for which the last column is too narrow gets room up to this width, in pixels. */
const ROOM_FOR_TEXT = 700;
const CHARACTER_WIDTH = 6.5;

/**
 * The sheet in view as it is printed: its used cells with the texts that the grid shows.
 *
 * @param grid - The grid.
 * @returns The sheet.
 */
export function printableSheet(grid: Grid): PrintableSheet {
  const workbook = openWorkbook(grid);
  const sheet = workbook.getActiveSheet().getSheet();
  const styles = workbook.getWorkbook().getStyles();
  const cell = (row: number, column: number): SheetCell => {
    const found = sheet.getCell(row, column);
    if (!found) return EMPTY;
    const text = found.t === CellValueType.BOOLEAN ? (found.v ? "TRUE" : "FALSE") : (found.v ?? "");
    const isNumber = sheet.getCellRaw(row, column)?.t === CellValueType.NUMBER;
    return { text: String(text), isNumber, style: styles.getStyleByCell(found) ?? undefined };
  };
  const { endRow, endColumn } = sheet.getDataRangeScope();
  const blocks = filledBlocks(grid, sheet.getSheetId()).map(({ block }) => block);
  const used = [{ endRow, endColumn }, ...blocks];
  let rowCount = 0;
  let columnCount = 0;
  let spare = 0;
  for (let row = 0; row <= Math.max(...used.map((one) => one.endRow)); row += 1)
    for (let column = 0; column <= Math.max(...used.map((one) => one.endColumn)); column += 1) {
      const { text, isNumber } = cell(row, column);
      if (text === "") continue;
      rowCount = row + 1;
      if (column + 1 > columnCount) spare = 0;
      columnCount = Math.max(columnCount, column + 1);
      if (column + 1 < columnCount || isNumber) continue;
      const needed = Math.min(ROOM_FOR_TEXT, text.length * CHARACTER_WIDTH);
      spare = Math.max(spare, needed - sheet.getColumnWidth(column));
    }
  const { xSplit, ySplit } = sheet.getFreeze();
  return {
    rowCount,
    columnCount: columnCount + (spare > 0 ? 1 : 0),
    frozenRows: ySplit,
    frozenColumns: xSplit,
    merged: sheet.getMergeData(),
    width: (column) => {
      if (column >= columnCount) return spare;
      return sheet.getColVisible(column) ? sheet.getColumnWidth(column) : 0;
    },
    isRowShown: (row) => sheet.getRowVisible(row),
    cell: (row, column) => (column >= columnCount ? EMPTY : cell(row, column)),
  };
}
