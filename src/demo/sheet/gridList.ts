import type { ICellData } from "@univerjs/core";
import { TOP_COLUMNS, TOP_ROWS, type SheetTop } from "../../addin/workbook/sheetTop";
import { NotDone, type SelectedList } from "../../addin/workbook/workbookHost";
import { listAround, type SheetCells } from "../../addin/workbook/listArea";
import type { CellValue } from "../../host/cellValues";
import { valueOf } from "./gridContent";
import { isEmptyCell } from "../../functions/cells/cellValue";
import type { Grid } from "./grid";
import { openWorkbook, selectedPlace } from "./gridCells";

/** A value as Excel gives it to a page: an error is its code, a blank cell is empty text. */
function asExcelGives(value: CellValue): string | number | boolean {
  if (value === null) return "";
  return typeof value === "object" ? value.error : value;
}

/** A cell with a text of several lines, which the grid keeps as a document, as one with a plain text. */
function plainCell(cell: ICellData | undefined): ICellData | undefined {
  const lines = cell?.p?.body?.dataStream;
  if (lines === undefined) return cell;
  return { v: lines.replace(/\r\n$/, "").replaceAll("\r", "\n") };
}

/** The cells of the sheet that is shown, from A1 to the last filled row and column, with what formulas fill. */
export function shownCells(grid: Grid): SheetCells {
  const workbook = openWorkbook(grid);
  const sheet = workbook.getActiveSheet();
  const [unit, id] = [workbook.getId(), sheet.getSheetId()];
  const matrix = sheet.getSheet().getCellMatrix();
  const spilled = grid.formulas.getArrayFormulaCellData()[unit]?.[id];
  const rows = sheet.getLastRow() + 1;
  const columns = sheet.getLastColumn() + 1;
  const spilledRows = Object.keys(spilled ?? {}).map((row) => Number(row) + 1);
  const block = <Result>(read: (row: number, column: number) => Result): Result[][] =>
    Array.from({ length: Math.max(rows, ...spilledRows) }, (_row, row) =>
      Array.from({ length: columns }, (_column, column) => read(row, column))
    );
  const formulas = block(
    (row, column) => grid.formulas.getFormulaStringByCell(row, column, id, unit) || ""
  );
  const values = block((row, column) => {
    const cell = plainCell(matrix.getValue(row, column) || undefined);
    const isAnswer = (formulas[row]?.[column] ?? "") !== "";
    const isBlank = !isAnswer && isEmptyCell(cell?.v);
    const filled = isBlank ? spilled?.[row]?.[column] : undefined;
    return asExcelGives(filled ? valueOf(filled, true) : valueOf(cell, isAnswer));
  });
  return { sheet: sheet.getSheetName(), top: 1, left: 1, values, formulas };
}

/** The first cells of each sheet of the grid that is not hidden. */
export function readTops(grid: Grid): readonly SheetTop[] {
  return openWorkbook(grid)
    .getSheets()
    .filter((sheet) => !sheet.isSheetHidden())
    .map((sheet) => ({
      sheet: sheet.getSheetName(),
      values: sheet
        .getRange(
          0,
          0,
          Math.min(TOP_ROWS, sheet.getMaxRows()),
          Math.min(TOP_COLUMNS, sheet.getMaxColumns())
        )
        .getValues(),
    }));
}

/**
 * The list around the selected cell of the grid. The grid has no tables.
 *
 * @throws NotDone when there is no list, or one that cannot be worked on.
 */
export function readList(grid: Grid): SelectedList {
  const { row, column } = selectedPlace(grid);
  const list = listAround(shownCells(grid), row + 1, column + 1);
  const top = list.headingRow - 1;
  const isMerged = openWorkbook(grid)
    .getActiveSheet()
    .getMergedRanges()
    .map((merged) => merged.getRange())
    .some(({ startRow, endRow, startColumn, endColumn }) => {
      const left = list.firstColumn - 1;
      const isInRow = startRow <= top && endRow >= top;
      return isInRow && endColumn >= left && startColumn < left + list.headings.length;
    });
  if (isMerged)
    throw new NotDone(
      `The headings in row ${list.headingRow} have merged cells. Unmerge them so that each column has its own heading.`
    );
  return list;
}
