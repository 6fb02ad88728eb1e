import type { Cell, Worksheet } from "@cj-tech-master/excelts";
import type { ICellData, IStyleData, IWorkbookData } from "@univerjs/core";
import { cellAddress } from "../../host/cellAddress";
import { fileSpelling } from "../workbook/fileSpelling";
import type { OwnFunctionNames } from "../workbook/ownFunctionNames";
import { fileValue } from "../workbook/cellChange";
import { giveLook } from "./cellLook";
import { styleOf, valueOf, type WrittenCell, type WrittenSheet } from "./gridContent";

type Before = (row: number, column: number) => ICellData | undefined;

function addressOf({ row, column, block }: WrittenCell): string {
  const first = cellAddress(row + 1, column + 1);
  const isOne =
    !block || (block.startRow === block.endRow && block.startColumn === block.endColumn);
  return isOne ? first : `${first}:${cellAddress(block.endRow + 1, block.endColumn + 1)}`;
}

function writeFormula(cell: Cell, written: WrittenCell, formula: string, stored: string): void {
  const result = fileValue(written.value);
  const ref = addressOf(written);
  // Without the mark of a dynamic array, Excel would use only the first cell of a result.
  const isDynamic = stored !== formula || ref.includes(":");
  const mark = isDynamic ? { shareType: "array", ref, isDynamicArray: true } : {};
  cell.value = { formula: stored, result, ...mark };
}

function writeCell(
  cell: Cell,
  written: WrittenCell,
  before: ICellData | undefined,
  names: OwnFunctionNames
): void {
  const { formula, value } = written;
  if (formula !== undefined) {
    writeFormula(cell, written, formula, fileSpelling(formula, names));
    return;
  }
  const isAsBefore = before !== undefined && before.f === undefined;
  if (isAsBefore && Object.is(valueOf(before, false), value)) return;
  cell.value = value === null ? null : fileValue(value);
}

function lookBefore(
  cell: ICellData | undefined,
  snapshot: IWorkbookData | undefined
): IStyleData | undefined {
  return snapshot === undefined ? undefined : styleOf(cell, snapshot);
}

/**
 * Writes the cells of a sheet of the grid to a sheet of a file. A cell that has not changed keeps what the grid does not show, such as
 * several fonts in one cell.
 *
 * @param sheet - The file's sheet.
 * @param written - The grid's sheet.
 * @param opened - The data of the grid as they were opened; undefined for a new file.
 * @param names - The names of our functions.
 */
export function writeCells(
  sheet: Worksheet,
  written: WrittenSheet,
  opened: IWorkbookData | undefined,
  names: OwnFunctionNames
): void {
  const cells = opened?.sheets[written.id]?.cellData;
  const before: Before = (row, column) => cells?.[row]?.[column];
  const kept = new Set(written.cells.map(({ row, column }) => cellAddress(row + 1, column + 1)));
  sheet.eachRow((row) => {
    row.eachCell((cell) => {
      if (cell.master === cell && !kept.has(cell.address)) cell.value = null;
    });
  });
  for (const one of written.cells) {
    const cell = sheet.getCell(one.row + 1, one.column + 1);
    if (cell.master !== cell) continue;
    const old = before(one.row, one.column);
    writeCell(cell, one, old, names);
    giveLook(cell, one.style ?? {}, lookBefore(old, opened) ?? {});
  }
}
