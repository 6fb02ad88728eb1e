import { WrapStrategy } from "@univerjs/core";
import { INPUT_COLOR, type NewSheet } from "../../addin/workbook/newSheet";
import { freeSheetName } from "../../addin/workbook/sheetName";
import { NotDone, type WorkbookHost } from "../../addin/workbook/workbookHost";
import { cellAddress } from "../../host/cellAddress";
import { enterValue, followSelection, goTo, markCells } from "./gridCellChanges";
import { fillColumns } from "./gridFill";
import { readList, readTops } from "./gridList";
import type { Grid } from "./grid";
import type { GridPlace } from "./gridAnswers";
import { cellAt, openWorkbook, selectedPlace } from "./gridCells";
import { lookAt } from "./gridLook";
import { pixelsOfHeight, pixelsOfWidth } from "./sheetSizes";

/** In points. */
const HEIGHT_OF_THREE_LINES = 45;
const SPARE_ROWS = 60;
const LEAST_COLUMNS = 26;

function addressOf({ row, column }: GridPlace): string {
  return cellAddress(row + 1, column + 1);
}

function addSheet(grid: Grid, wanted: NewSheet): string {
  const { cells, widths, formats, headingRow, page, looks = [] } = wanted;
  const workbook = openWorkbook(grid);
  const name = freeSheetName(
    wanted.name,
    workbook.getSheets().map((sheet) => sheet.getSheetName())
  );
  const rows = Math.max(cells.length, ...looks.map((look) => look.row + look.rows - 1));
  const width = Math.max(
    1,
    ...cells.map((line) => line.length),
    ...looks.map((look) => look.column + look.columns - 1)
  );
  const sheet = workbook.create(
    name,
    rows + SPARE_ROWS,
    Math.max(width, widths.length, LEAST_COLUMNS)
  );
  const content = Array.from({ length: rows }, (_row, row) =>
    Array.from({ length: width }, (_cell, column) => {
      const value = cells[row]?.[column] ?? "";
      const pattern = row >= headingRow ? (formats[column] ?? "") : "";
      const style = {
        ...(pattern === "" ? {} : { n: { pattern } }),
        ...(row === headingRow - 1 ? { bl: 1 as const, tb: WrapStrategy.WRAP } : {}),
        ...(page?.wrapsText === true ? { tb: WrapStrategy.WRAP } : {}),
        ...lookAt(looks, row + 1, column + 1),
      };
      const isFormula = typeof value === "string" && value.startsWith("=");
      return { ...(isFormula ? { f: value } : value === "" ? {} : { v: value }), s: style };
    })
  );
  if (content.length > 0) sheet.getRange(0, 0, content.length, width).setValues(content);
  for (const [column, characters] of widths.entries())
    sheet.setColumnWidth(column, pixelsOfWidth(characters));
  const isCut = (cells[headingRow - 1] ?? []).map(String).some((heading, column) => {
    const most = widths[column] ?? heading.length;
    return heading.length > most && !heading.startsWith("=");
  });
  if (isCut) sheet.setRowHeight(headingRow - 1, pixelsOfHeight(HEIGHT_OF_THREE_LINES));
  for (const address of wanted.inputs ?? []) sheet.getRange(address).setBackground(INPUT_COLOR);
  const { frozenColumns = 0 } = wanted;
  sheet.setFreeze({
    ySplit: headingRow,
    startRow: headingRow,
    xSplit: frozenColumns,
    startColumn: frozenColumns === 0 ? -1 : frozenColumns,
  });
  workbook.setActiveSheet(sheet);
  return name;
}

/**
 * The workbook in the grid for the buttons of the guide: reads the selected cell, inserts a formula into it, or adds a sheet. It never
 * overwrites anything.
 *
 * @param grid - The grid.
 * @returns The workbook. It throws NotDone for what it cannot do.
 */
export function gridWorkbook(grid: Grid): WorkbookHost {
  return {
    selectedCell: () => {
      const place = selectedPlace(grid);
      const { value, filledBy = place } = cellAt(grid, place);
      return Promise.resolve({
        sheet: openWorkbook(grid).getActiveSheet().getSheetName(),
        address: addressOf(place),
        formula: cellAt(grid, filledBy).formula,
        isEmpty: value === null || value === "",
        rowsBelow: place.row - filledBy.row,
        columnsRight: place.column - filledBy.column,
      });
    },
    putFormula: (formula) => {
      const place = selectedPlace(grid);
      const { value, formula: present } = cellAt(grid, place);
      const address = addressOf(place);
      if (present !== "" || (value !== null && value !== "")) {
        return Promise.reject(new NotDone(`${address} is not empty; select an empty cell.`));
      }
      const sheet = openWorkbook(grid).getActiveSheet();
      sheet.getRange(place.row, place.column).setValue({ f: formula });
      return Promise.resolve({ address, isWideEnough: true });
    },
    addSheet: (wanted) => Promise.resolve(addSheet(grid, wanted)),
    // What throws in one of these is the rejection of its promise.
    selectedList: async () => Promise.resolve(readList(grid)),
    fillColumns: async (list, columns) => Promise.resolve(fillColumns(grid, list, columns)),
    followSelection: (moved) => followSelection(grid, moved),
    enterValue: async (...given) => {
      await Promise.resolve();
      enterValue(grid, ...given);
    },
    sheetTops: async () => Promise.resolve(readTops(grid)),
    goTo: async (cell) => {
      await Promise.resolve();
      goTo(grid, cell);
    },
    markCells: async (...given) => {
      await Promise.resolve();
      markCells(grid, ...given);
    },
  };
}
