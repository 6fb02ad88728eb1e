import { Workbook } from "@cj-tech-master/excelts";
import { installFormulaEngine } from "@cj-tech-master/excelts/formula";

installFormulaEngine();

/** The content of a cell: a number, a text, a formula without its equals sign, or nothing. */
export type Written = number | string | { readonly formula: string } | undefined;

/** Sheets by name, row by row. */
export type Sheets = Readonly<Record<string, readonly (readonly Written[])[]>>;

/**
 * Writes a workbook, calculates it with a third-party spreadsheet engine, and reads one sheet back.
 *
 * @param sheets - The content of each sheet, from A1 on.
 * @param read - The sheet to read.
 * @returns Its cells: numbers and texts as written, the results of formulas.
 */
export function workbookRows(sheets: Sheets, read: string): readonly (readonly unknown[])[] {
  const workbook = new Workbook();
  for (const [name, rows] of Object.entries(sheets)) {
    const sheet = workbook.addWorksheet(name);
    rows.forEach((cells, row) => {
      cells.forEach((cell, column) => {
        if (cell !== undefined) sheet.getCell(row + 1, column + 1).value = cell;
      });
    });
  }
  workbook.calculateFormulas();
  const sheet = workbook.getWorksheet(read);
  return (sheets[read] ?? []).map((cells, row) =>
    cells.map((cell, column) => {
      if (typeof cell !== "object") return cell;
      return sheet?.getCell(row + 1, column + 1).result;
    })
  );
}
