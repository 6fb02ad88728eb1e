import { NotDone, type NewSheet, type WorkbookHost } from "../../addin/workbookHost";
import { cellAddress } from "../workbook/cellAddress";
import type { Grid } from "./grid";

const PIXELS_OF_A_CHARACTER = 7;

/** The grid's open workbook as the guide works on it. */
export function gridWorkbook(grid: Grid): WorkbookHost {
  const openBook = () => {
    const book = grid.getActiveWorkbook();
    if (!book) throw new NotDone("No workbook is open.");
    return book;
  };
  const selected = () => {
    const book = openBook();
    const range = book.getActiveRange();
    if (!range) throw new NotDone("No cell is selected; click one.");
    const row = range.getRow();
    const column = range.getColumn();
    return { sheet: book.getActiveSheet(), row, column };
  };
  return {
    selectedCell: () => {
      const { sheet, row, column } = selected();
      const cell = sheet.getRange(row, column);
      const formula = cell.getFormula();
      const value = cell.getValue();
      return Promise.resolve({
        sheet: sheet.getSheetName(),
        address: cellAddress(row + 1, column + 1),
        formula,
        isEmpty: formula === "" && (value === null || value === undefined || value === ""),
        rowsBelow: 0,
      });
    },
    putFormula: (formula) => {
      const { sheet, row, column } = selected();
      const cell = sheet.getRange(row, column);
      const address = cellAddress(row + 1, column + 1);
      const value = cell.getValue();
      if (cell.getFormula() !== "" || (value !== null && value !== undefined && value !== ""))
        return Promise.reject(new NotDone(`${address} is not empty; select an empty cell.`));
      cell.setValue({ f: formula });
      return Promise.resolve(address);
    },
    addSheet: ({ name, cells, widths, formats, headingRow }: NewSheet) => {
      const book = openBook();
      const taken = new Set(book.getSheets().map((sheet) => sheet.getSheetName().toLowerCase()));
      let free = name;
      for (let number = 2; taken.has(free.toLowerCase()); number += 1)
        free = `${name} ${String(number)}`;
      const width = Math.max(...cells.map((line) => line.length));
      const sheet = book.create(free, cells.length + 60, Math.max(width + 6, 26));
      for (const [row, line] of cells.entries())
        for (const [column, value] of line.entries()) {
          if (value === "") continue;
          const isFormula = typeof value === "string" && value.startsWith("=");
          const cell = sheet.getRange(row, column);
          cell.setValue(isFormula ? { f: value } : value);
          const format = formats[column] ?? "";
          if (row >= headingRow && format !== "") cell.setNumberFormat(format);
          if (row === headingRow - 1 && headingRow > 0) cell.setFontWeight("bold");
        }
      for (const [column, characters] of widths.entries())
        sheet.setColumnWidth(column, characters * PIXELS_OF_A_CHARACTER);
      sheet.setFrozenRows(headingRow);
      book.setActiveSheet(sheet);
      return Promise.resolve(free);
    },
  };
}
