import { HEADING_COLORS, type CellsLook } from "../workbook/newSheet";

/** Gives a block of cells of a new sheet its look. */
export function setLook(sheet: Excel.Worksheet, look: CellsLook): void {
  const { row, column, rows, columns, style, format } = look;
  const range = sheet.getRangeByIndexes(row - 1, column - 1, rows, columns);
  if (format !== undefined)
    range.numberFormat = Array.from({ length: rows }, () =>
      Array.from({ length: columns }, () => format)
    );
  switch (style) {
    case "title":
      range.format.font.bold = true;
      range.format.font.size = 14;
      range.format.wrapText = false;
      return;
    case "heading":
      range.format.font.bold = true;
      range.format.font.color = HEADING_COLORS.text;
      range.format.fill.color = HEADING_COLORS.fill;
      range.format.wrapText = true;
      return;
    case "total":
      range.format.font.bold = true;
      return;
    case "wrapped":
      range.format.wrapText = true;
      range.format.verticalAlignment = "Top";
      return;
    case undefined:
  }
}
