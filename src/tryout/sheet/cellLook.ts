import type { Cell } from "@cj-tech-master/excelts";
import { BooleanNumber, type IStyleData, VerticalAlign, WrapStrategy } from "@univerjs/core";

function color(argb: string | undefined): string | undefined {
  return argb === undefined ? undefined : `#${argb.slice(-6)}`;
}

/**
 * How a cell of a file looks, as far as the grid shows it: bold, colors, wrapped lines, number format.
 *
 * @param cell - The cell.
 * @returns The grid's style, or `undefined` for a plain cell.
 */
export function gridStyle(cell: Cell): IStyleData | undefined {
  const style: IStyleData = {};
  const { font, fill, alignment, numFmt } = cell;
  if (font?.bold) style.bl = BooleanNumber.TRUE;
  if (font?.size !== undefined && font.size !== 11) style.fs = font.size;
  const ink = color(font?.color?.argb);
  if (ink) style.cl = { rgb: ink };
  const ground =
    fill?.type === "pattern" && fill.pattern === "solid" ? fill.fgColor?.argb : undefined;
  const rgb = color(ground);
  if (rgb) style.bg = { rgb };
  if (alignment?.wrapText) style.tb = WrapStrategy.WRAP;
  if (alignment?.vertical === "middle") style.vt = VerticalAlign.MIDDLE;
  if (alignment?.vertical === "top") style.vt = VerticalAlign.TOP;
  if (typeof numFmt === "string" && numFmt !== "General") style.n = { pattern: numFmt };
  return Object.keys(style).length > 0 ? style : undefined;
}

/** Gives a cell of a file the look of a cell of the grid. */
export function giveLook(cell: Cell, style: IStyleData | undefined): void {
  if (!style) return;
  const { bl, fs, cl, bg, tb, n } = style;
  const argb = (rgb: string | null | undefined): string =>
    `FF${(rgb ?? "#000000").slice(-6).toUpperCase()}`;
  if (bl === BooleanNumber.TRUE || cl?.rgb || fs !== undefined)
    cell.font = {
      ...(bl === BooleanNumber.TRUE ? { bold: true } : {}),
      ...(fs === undefined ? {} : { size: fs }),
      ...(cl?.rgb ? { color: { argb: argb(cl.rgb) } } : {}),
    };
  if (bg?.rgb?.startsWith("#"))
    cell.fill = { type: "pattern", pattern: "solid", fgColor: { argb: argb(bg.rgb) } };
  if (tb === WrapStrategy.WRAP) cell.alignment = { wrapText: true };
  if (n?.pattern) cell.numFmt = n.pattern;
}
