import type { Cell, Worksheet } from "@cj-tech-master/excelts";
import { HEADING_COLORS, INPUT_COLOR } from "../../addin/workbook/newSheet";
import { columnLetters } from "../../host/cellAddress";

/** A font that names no family is shown in another one than the other cells. */
const FONT = { name: "Calibri", family: 2, size: 11, scheme: "minor" } as const;
/** A color of the pane, such as #16645A, as a file has it: with its opacity, which is full. */
const inFile = (color: string): string => color.replace("#", "FF");
const HEADING_FILL = inFile(HEADING_COLORS.fill);
const HEADING_TEXT = inFile(HEADING_COLORS.text);
const INPUT_FILL = inFile(INPUT_COLOR);
const NOTE_COLOR = "FF5A6664";
const LINE = { style: "thin", color: { argb: "FFB9C6C3" } } as const;

/** Shows a cell in bold. */
export function setBold(cell: Cell): void {
  cell.font = { ...FONT, bold: true };
}

/** Shows a cell as a link. */
export function styleLink(cell: Cell): void {
  cell.font = { ...FONT, underline: true, color: { argb: HEADING_FILL } };
}

/** Styles one cell of a row of headings. */
export function styleHeading(cell: Cell): void {
  cell.font = { ...FONT, bold: true, color: { argb: HEADING_TEXT } };
  cell.fill = { type: "pattern", pattern: "solid", fgColor: { argb: HEADING_FILL } };
  cell.alignment = { wrapText: true, vertical: "middle" };
}

/** Styles the filled cells of a row as headings. */
export function styleHeadings(sheet: Worksheet, rowNumber: number, height = 32): void {
  const row = sheet.getRow(rowNumber);
  row.height = height;
  row.eachCell(styleHeading);
}

/**
 * Styles a table that a formula fills: the headings, and a line below each row that is filled.
 *
 * @param sheet - The sheet.
 * @param corner - The cell with the formula.
 * @param size - Rows that may be filled, with the headings, and columns.
 * @param height - Height of the rows below the headings in points, with wrapped text; rows of one line if left out.
 */
export function styleFilledTable(
  sheet: Worksheet,
  corner: { readonly row: number; readonly column: number },
  size: { readonly rows: number; readonly columns: number },
  height?: number
): void {
  const lastColumn = corner.column + size.columns - 1;
  const [first, last] = [corner.row + 1, corner.row + size.rows - 1];
  for (let column = corner.column; column <= lastColumn; column += 1) {
    styleHeading(sheet.getCell(corner.row, column));
    if (height === undefined) continue;
    for (let row = first; row <= last; row += 1)
      sheet.getCell(row, column).alignment = { wrapText: true, vertical: "top" };
  }
  for (let row = first; row <= last && height !== undefined; row += 1)
    sheet.getRow(row).height = height;
  const letters = columnLetters(corner.column);
  underlineRows(
    sheet,
    `${letters}${first}:${columnLetters(lastColumn)}${last}`,
    `$${letters}${first}`
  );
}

/** Draws a line below each row in which a cell shows something. */
export function underlineRows(sheet: Worksheet, ref: string, cell: string): void {
  sheet.addConditionalFormatting({
    ref,
    rules: [
      {
        type: "expression",
        formulae: [`LEN(${cell})>0`],
        style: { border: { bottom: LINE } },
      },
    ],
  });
}

/** Styles the filled cells of a row as a line with a total. */
export function styleTotal(sheet: Worksheet, rowNumber: number, columns: number): void {
  for (let column = 1; column <= columns; column += 1) {
    const cell = sheet.getCell(rowNumber, column);
    setBold(cell);
    cell.border = { top: LINE };
  }
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
  if (value instanceof Date || typeof value === "number") cell.alignment = { horizontal: "right" };
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
  cell.value = { formula };
  if (format !== undefined) cell.numFmt = format;
}

/** Puts the title of a sheet into its first cell: a text, or a formula that begins with an equals sign. */
export function putTitle(sheet: Worksheet, title: string): void {
  const cell = sheet.getCell("A1");
  cell.value = title.startsWith("=") ? { formula: title.slice(1) } : title;
  cell.font = { ...FONT, bold: true, size: 16, color: { argb: HEADING_FILL } };
  sheet.getRow(1).height = 24;
}

/** Puts a label in bold into a cell. */
export function putLabel(sheet: Worksheet, address: string, text: string): void {
  const cell = sheet.getCell(address);
  cell.value = text;
  setBold(cell);
}

/** Puts a remark into a cell. */
export function putNote(sheet: Worksheet, address: string, text: string): void {
  const cell = sheet.getCell(address);
  cell.value = text;
  cell.font = { ...FONT, color: { argb: NOTE_COLOR } };
}

/** Sets the widths of the first columns, in characters. */
export function setWidths(sheet: Worksheet, widths: readonly number[]): void {
  for (const [index, width] of widths.entries()) sheet.getColumn(index + 1).width = width;
}
