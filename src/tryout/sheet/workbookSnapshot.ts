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
import type { OwnFunctionNames } from "../workbook/ownFunctionNames";
import { gridStyle } from "./cellLook";
import { typedSpelling } from "./typedSpelling";

const MILLISECONDS_OF_A_DAY = 86_400_000;
const SERIAL_OF_1970 = 25_569;
const LEAST_ROWS = 60;
const LEAST_COLUMNS = 26;
const SPARE = 20;
const PIXELS_OF_A_CHARACTER = 7;
const PIXELS_OF_PADDING = 5;
const PIXELS_OF_A_POINT = 4 / 3;
const DEFINED_NAMES = "SHEET_DEFINED_NAME_PLUGIN";

function plainValue(value: unknown): Pick<ICellData, "v" | "t"> {
  if (value instanceof Date)
    return { v: value.getTime() / MILLISECONDS_OF_A_DAY + SERIAL_OF_1970, t: CellValueType.NUMBER };
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (typeof value === "string") return { v: value, t: CellValueType.STRING };
  return {};
}

/** Text of a cell that holds more than a plain value: a link, rich text, an error. */
function textOf(cell: Cell): unknown {
  const { value } = cell;
  const isPlain = value === null || typeof value !== "object" || value instanceof Date;
  return isPlain ? value : cell.text;
}

function gridCell(cell: Cell, names: OwnFunctionNames): ICellData | undefined {
  const style = gridStyle(cell);
  const look = style ? { s: style } : {};
  // What a formula filled is left to the formula to fill again.
  if (cell.formula) return { f: `=${typedSpelling(cell.formula, names)}`, ...look };
  const content = plainValue(textOf(cell));
  return Object.keys(content).length > 0 || style ? { ...content, ...look } : undefined;
}

/** Cells that a spilled formula of the file filled: they hold its old answer, not content of their own. */
function spilledOver(sheet: Worksheet): ReadonlySet<string> {
  const filled = new Set<string>();
  sheet.eachRow((row) => {
    row.eachCell((cell) => {
      const value = cell.value as { shareType?: string; ref?: string } | null;
      if (value?.shareType !== "array" || value.ref === undefined) return;
      const [from = "", to = from] = value.ref.split(":");
      const first = sheet.getCell(from);
      const last = sheet.getCell(to);
      for (let down = first.row; down <= last.row; down += 1)
        for (let across = first.col; across <= last.col; across += 1)
          if (down !== first.row || across !== first.col) filled.add(`${down},${across}`);
    });
  });
  return filled;
}

/** Merged cells, each as the block from its first cell on. */
function mergedRanges(sheet: Worksheet): IRange[] {
  const blocks = new Map<string, IRange>();
  sheet.eachRow({ includeEmpty: true }, (row) => {
    row.eachCell({ includeEmpty: true }, (cell) => {
      if (!cell.isMerged) return;
      const { master } = cell;
      const block = blocks.get(master.address) ?? {
        startRow: master.row - 1,
        startColumn: master.col - 1,
        endRow: master.row - 1,
        endColumn: master.col - 1,
      };
      block.endRow = Math.max(block.endRow, cell.row - 1);
      block.endColumn = Math.max(block.endColumn, cell.col - 1);
      blocks.set(master.address, block);
    });
  });
  return [...blocks.values()];
}

function gridSheet(sheet: Worksheet, id: string, names: OwnFunctionNames): IWorksheetData {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const rowData: Record<number, { h: number }> = {};
  const columnData: Record<number, { w: number }> = {};
  const filled = spilledOver(sheet);
  let lastRow = 0;
  let lastColumn = 0;
  sheet.eachRow((row, number) => {
    if (row.height) rowData[number - 1] = { h: row.height * PIXELS_OF_A_POINT };
    row.eachCell((cell, column) => {
      if (cell.master !== cell || filled.has(`${number},${column}`)) return;
      const content = gridCell(cell, names);
      if (!content) return;
      (cellData[number - 1] ??= {})[column - 1] = content;
      lastRow = Math.max(lastRow, number);
      lastColumn = Math.max(lastColumn, column);
    });
  });
  for (let column = 1; column <= sheet.columnCount; column += 1) {
    const { width } = sheet.getColumn(column);
    if (width !== undefined)
      columnData[column - 1] = { w: width * PIXELS_OF_A_CHARACTER + PIXELS_OF_PADDING };
  }
  const [view] = sheet.views;
  const frozen = view?.state === "frozen" ? view : undefined;
  const xSplit = frozen?.xSplit ?? 0;
  const ySplit = frozen?.ySplit ?? 0;
  return {
    id,
    name: sheet.name,
    cellData,
    rowData,
    columnData,
    mergeData: mergedRanges(sheet),
    rowCount: Math.max(lastRow + SPARE, LEAST_ROWS),
    columnCount: Math.max(lastColumn + SPARE / 2, LEAST_COLUMNS),
    freeze: {
      xSplit,
      ySplit,
      startRow: ySplit > 0 ? ySplit : -1,
      startColumn: xSplit > 0 ? xSplit : -1,
    },
    hidden: sheet.state === "visible" || !sheet.state ? BooleanNumber.FALSE : BooleanNumber.TRUE,
  } as unknown as IWorksheetData;
}

/**
 * A workbook of a file as the grid takes it: cells, formulas as typed, look, widths, frozen panes, merged cells, defined names.
 *
 * @param workbook - The workbook.
 * @param id - What the grid is to call it.
 * @param names - The names of our functions.
 * @returns The grid's data, without any answer: the grid calculates them.
 */
export function workbookSnapshot(
  workbook: Workbook,
  id: string,
  names: OwnFunctionNames
): IWorkbookData {
  const sheets = workbook.worksheets.map((sheet, index) =>
    gridSheet(sheet, `sheet-${String(index + 1)}`, names)
  );
  const defined = workbook.definedNames.model.map(({ name, ranges }) => ({
    id: name,
    name,
    formulaOrRefString: ranges.join(","),
  }));
  return {
    id,
    name: id,
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder: sheets.map((sheet) => sheet.id),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])),
    resources: [
      {
        name: DEFINED_NAMES,
        data: JSON.stringify(Object.fromEntries(defined.map((entry) => [entry.id, entry]))),
      },
    ],
  };
}
