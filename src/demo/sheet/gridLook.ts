import { BooleanNumber, VerticalAlign, WrapStrategy, type IStyleData } from "@univerjs/core";
import { HEADING_COLORS, type CellsLook } from "../../addin/workbook/newSheet";

function styleOf({ style, format }: CellsLook): IStyleData {
  const pattern = format === undefined ? {} : { n: { pattern: format } };
  if (style === undefined) return pattern;
  switch (style) {
    case "title":
      return { ...pattern, bl: BooleanNumber.TRUE, fs: 14, tb: WrapStrategy.OVERFLOW };
    case "heading":
      return {
        ...pattern,
        bl: BooleanNumber.TRUE,
        bg: { rgb: HEADING_COLORS.fill },
        cl: { rgb: HEADING_COLORS.text },
        tb: WrapStrategy.WRAP,
      };
    case "total":
      return { ...pattern, bl: BooleanNumber.TRUE };
    case "wrapped":
      return { ...pattern, tb: WrapStrategy.WRAP, vt: VerticalAlign.TOP };
  }
}

/**
 * The style of a cell of a new sheet, as the grid has it.
 *
 * @param looks - The looks of the sheet.
 * @param row - Counted from 1.
 * @param column - Counted from 1.
 */
export function lookAt(looks: readonly CellsLook[], row: number, column: number): IStyleData {
  const here = looks.filter(
    (look) =>
      row >= look.row &&
      row < look.row + look.rows &&
      column >= look.column &&
      column < look.column + look.columns
  );
  return Object.assign({}, ...here.map(styleOf)) as IStyleData;
}
