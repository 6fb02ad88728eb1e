import { Workbook } from "@cj-tech-master/excelts";
import { installFormulaEngine } from "@cj-tech-master/excelts/formula";

installFormulaEngine();

/** What is written into a cell: a number, a text, a formula without its equals sign, or nothing. */
export type Written = number | string | { readonly formula: string } | undefined;

/** A sheet by its name, row by row. */
export type Sheets = Readonly<Record<string, readonly (readonly Written[])[]>>;

/**
 * Writes a workbook, has it worked out by a spreadsheet engine made by others, and reads one sheet back.
 *
 * @param sheets - What stands in each sheet, from A1 on.
 * @param read - The sheet to read.
 * @returns Its cells: numbers and texts as written, the answers of formulas.
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
