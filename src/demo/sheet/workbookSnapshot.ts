import type { Cell, Workbook, Worksheet } from "@cj-tech-master/excelts";
import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IRange,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
} from "@univerjs/core";
import { type CellValue, isErrorCell } from "../../host/cellValues";
import type { OwnFunctionNames } from "../workbook/ownFunctionNames";
import { gridStyle } from "./cellLook";
import { gridNames } from "./gridNames";
import { plainValue } from "./libraryWorkbook";
import { spilledCells } from "./spilledCells";
import { pixelsOfHeight, pixelsOfWidth } from "./sheetSizes";
import { typedSpelling } from "./typedSpelling";

const LEAST_ROWS = 100;
const LEAST_COLUMNS = 26;
const SPARE_ROWS = 50;
const SPARE_COLUMNS = 6;
/** Widths in a file count digits of its default font, seven pixels each; this size of the font of the grid has the same width. */
const PLAIN = { ff: "Arial", fs: 10 };

function gridContent(value: CellValue): ICellData {
  if (value === null) return {};
  if (isErrorCell(value)) return { v: value.error, t: CellValueType.STRING };
  switch (typeof value) {
    case "number":
      return { v: value, t: CellValueType.NUMBER };
    case "boolean":
      return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
    default:
      return { v: value, t: CellValueType.STRING };
  }
}

function gridCell(cell: Cell, names: OwnFunctionNames, isFilled: boolean): ICellData {
  const style = gridStyle(cell);
  const look: ICellData = style === undefined ? {} : { s: style };
  if (isFilled) return look;
  // Results in the file are not used: the grid calculates every formula.
  if (cell.formula) return { f: `=${typedSpelling(cell.formula, names)}`, ...look };
  return { ...gridContent(plainValue(cell.value)), ...look };
}

function gridSheet(sheet: Worksheet, id: string, names: OwnFunctionNames): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const rowData: Record<number, { h?: number; hd?: BooleanNumber }> = {};
  const columnData: Record<number, { w?: number; hd?: BooleanNumber }> = {};
  const filled = spilledCells(sheet);
  sheet.eachRow({ includeEmpty: true }, (row, rowNumber) => {
    if (row.height) rowData[rowNumber - 1] = { h: pixelsOfHeight(row.height) };
    if (row.hidden) rowData[rowNumber - 1] = { hd: BooleanNumber.TRUE };
    row.eachCell({ includeEmpty: true }, (cell, columnNumber) => {
      const content = gridCell(cell, names, filled.has(cell.address) || cell.master !== cell);
      if (Object.keys(content).length === 0) return;
      (cellData[rowNumber - 1] ??= {})[columnNumber - 1] = content;
    });
  });
  for (let number = 1; number <= sheet.columnCount; number += 1) {
    const { width, hidden } = sheet.getColumn(number);
    columnData[number - 1] = {
      ...(width === undefined ? {} : { w: pixelsOfWidth(width) }),
      ...(hidden ? { hd: BooleanNumber.TRUE } : {}),
    };
  }
  const mergeData = sheet.mergedRegions.map(({ top, left, bottom, right }): IRange => ({
    startRow: top - 1,
    startColumn: left - 1,
    endRow: bottom - 1,
    endColumn: right - 1,
  }));
  // A sheet of a file without views has none, despite its type.
  const view = (sheet.views as typeof sheet.views | undefined)?.[0];
  const { xSplit = 0, ySplit = 0 } = view?.state === "frozen" ? view : {};
  return {
    id,
    name: sheet.name,
    cellData,
    rowData,
    columnData,
    mergeData,
    rowCount: Math.max(sheet.rowCount + SPARE_ROWS, LEAST_ROWS),
    columnCount: Math.max(sheet.columnCount + SPARE_COLUMNS, LEAST_COLUMNS),
    freeze: { xSplit, ySplit, startRow: ySplit || -1, startColumn: xSplit || -1 },
    hidden: sheet.state === "visible" ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    defaultStyle: PLAIN,
  };
}

/**
 * The data of the grid for a workbook: cells, formulas as typed, styles, sizes, frozen panes, merged cells and defined names.
 *
 * @param workbook - The workbook.
 * @param id - The id of the workbook in the grid.
 * @param names - The names of our functions.
 * @returns The data of the grid, without results.
 */
export function workbookSnapshot(
  workbook: Workbook,
  id: string,
  names: OwnFunctionNames
): IWorkbookData {
  const sheets = workbook.worksheets.map((sheet) => {
    const sheetId = `sheet-${sheet.id}`;
    return [sheetId, gridSheet(sheet, sheetId, names)] as const;
  });
  const sheetOrder = sheets.map(([sheetId]) => sheetId);
  return {
    id,
    name: id,
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder,
    sheets: Object.fromEntries(sheets),
    resources: [gridNames(workbook, sheetOrder, names)],
  };
}
