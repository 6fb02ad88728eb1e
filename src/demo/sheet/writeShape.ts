import type { Worksheet } from "@cj-tech-master/excelts";
import { BooleanNumber, type IWorksheetData } from "@univerjs/core";
import { heightOfPixels, widthOfPixels } from "./sheetSizes";

type Shape = Partial<IWorksheetData>;

function isSame(first: unknown, second: unknown): boolean {
  return JSON.stringify(first) === JSON.stringify(second);
}

function writeColumns(sheet: Worksheet, data: Shape, opened: Shape): void {
  for (const [key, column] of Object.entries(data.columnData ?? {})) {
    const { w, hd } = column as { readonly w?: number; readonly hd?: BooleanNumber };
    const before = opened.columnData?.[Number(key)];
    const target = sheet.getColumn(Number(key) + 1);
    if (w !== undefined && w !== before?.w) target.width = widthOfPixels(w);
    if ((hd ?? 0) !== (before?.hd ?? 0)) target.hidden = hd === BooleanNumber.TRUE;
  }
}

function writeRows(sheet: Worksheet, data: Shape, opened: Shape): void {
  for (const [key, row] of Object.entries(data.rowData ?? {})) {
    const { h, hd } = row as { readonly h?: number; readonly hd?: BooleanNumber };
    const before = opened.rowData?.[Number(key)];
    const target = sheet.getRow(Number(key) + 1);
    if (h !== undefined && h !== before?.h) target.height = heightOfPixels(h);
    if ((hd ?? 0) !== (before?.hd ?? 0)) target.hidden = hd === BooleanNumber.TRUE;
  }
}

function writeMerged(sheet: Worksheet, data: Shape, opened: Shape): void {
  if (isSame(data.mergeData ?? [], opened.mergeData ?? [])) return;
  for (const { top, left, bottom, right } of [...sheet.mergedRegions]) {
    sheet.unMergeCells(top, left, bottom, right);
  }
  for (const { startRow, startColumn, endRow, endColumn } of data.mergeData ?? []) {
    sheet.mergeCells(startRow + 1, startColumn + 1, endRow + 1, endColumn + 1);
  }
}

function writeFrozen(sheet: Worksheet, data: Shape, opened: Shape): void {
  const { xSplit = 0, ySplit = 0 } = data.freeze ?? {};
  const before = opened.freeze;
  if (xSplit === (before?.xSplit ?? 0) && ySplit === (before?.ySplit ?? 0)) return;
  sheet.views = xSplit > 0 || ySplit > 0 ? [{ state: "frozen", xSplit, ySplit }] : [];
}

/**
 * Writes widths, heights, hidden rows and columns, merged cells and frozen panes of a sheet of the grid to a sheet of a file, where they
 * have changed since it was opened.
 *
 * @param sheet - The file's sheet.
 * @param data - The grid's sheet.
 * @param opened - The sheet of the grid as it was opened; empty for a new one.
 */
export function writeShape(sheet: Worksheet, data: Shape, opened: Shape): void {
  for (const write of [writeColumns, writeRows, writeMerged, writeFrozen]) {
    write(sheet, data, opened);
  }
}
