import type { Cell, CellFormulaValue, Worksheet } from "@cj-tech-master/excelts";

/** Cell format of a rate or a share. */
export const PERCENT = "0.00%";

const HEADING_FILL = "FF1F3A4D";
const INPUT_FILL = "FFFFF7DC";

/** Styles a row of headings. */
export function styleHeadings(sheet: Worksheet, rowNumber: number, height = 32): void {
  const row = sheet.getRow(rowNumber);
  row.height = height;
  row.eachCell((cell) => {
    cell.font = { bold: true, color: { argb: "FFFFFFFF" } };
    cell.fill = { type: "pattern", pattern: "solid", fgColor: { argb: HEADING_FILL } };
    cell.alignment = { wrapText: true, vertical: "middle" };
  });
}

/** Colors a cell that the preparer may type into. */
export function styleInput(cell: Cell): void {
  cell.fill = { type: "pattern", pattern: "solid", fgColor: { argb: INPUT_FILL } };
}

/** A worksheet date from its ISO text. */
export function worksheetDate(iso: string): Date {
  return new Date(`${iso}T00:00:00Z`);
}

/** Puts a value that the preparer may change into a cell. */
export function putInput(
  sheet: Worksheet,
  address: string,
  value: string | number | Date | null,
  format?: string
): void {
  const cell = sheet.getCell(address);
  cell.value = value;
  if (format !== undefined) cell.numFmt = format;
  styleInput(cell);
}

/** Puts a formula into a cell, without its equals sign, and a number format where one is needed. */
export function putFormula(
  sheet: Worksheet,
  address: string,
  formula: string,
  format?: string
): void {
  const cell = sheet.getCell(address);
  cell.value = { formula } as CellFormulaValue;
  if (format !== undefined) cell.numFmt = format;
}

/** Puts a label in bold into a cell. */
export function putLabel(sheet: Worksheet, address: string, text: string): void {
  const cell = sheet.getCell(address);
  cell.value = text;
  cell.font = { bold: true };
}

/** Sets the widths of the first columns, in characters. */
export function setWidths(sheet: Worksheet, widths: readonly number[]): void {
  for (const [index, width] of widths.entries()) sheet.getColumn(index + 1).width = width;
}
