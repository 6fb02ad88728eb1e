import type { Alignment, Cell, Font } from "@cj-tech-master/excelts";
import {
  BooleanNumber,
  HorizontalAlign,
  type IStyleData,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import { fileBorders, gridBorders } from "./cellBorders";
import { argbOf, rgbOf } from "./cellColor";

const ACROSS = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
} as const;
const DOWN = {
  top: VerticalAlign.TOP,
  middle: VerticalAlign.MIDDLE,
  bottom: VerticalAlign.BOTTOM,
} as const;

function nameOf<Name extends string>(
  names: Readonly<Record<Name, number>>,
  value: number | undefined
): Name | undefined {
  return (Object.keys(names) as Name[]).find((name) => names[name] === value);
}

/** The default font of new files; the grid shows its own default font instead. */
const PLAIN: Partial<Font> = { name: "Calibri", size: 11, family: 2, scheme: "minor" };
/** Fonts for a machine that does not have the font of the file. */
const INSTEAD = "Arial";

function gridFont(font: Partial<Font> | undefined): IStyleData {
  const isPlain = font?.name === undefined || font.scheme === PLAIN.scheme;
  const color = rgbOf(font?.color);
  const isUnderlined = font?.underline !== undefined && ![false, "none"].includes(font.underline);
  return {
    ...(font?.bold ? { bl: BooleanNumber.TRUE } : {}),
    ...(font?.italic ? { it: BooleanNumber.TRUE } : {}),
    ...(isUnderlined ? { ul: { s: BooleanNumber.TRUE } } : {}),
    ...(font?.strike ? { st: { s: BooleanNumber.TRUE } } : {}),
    ...(font?.size === undefined || (isPlain && font.size === PLAIN.size) ? {} : { fs: font.size }),
    ...(font?.name === undefined || isPlain ? {} : { ff: `${font.name}, ${INSTEAD}` }),
    ...(color === undefined ? {} : { cl: { rgb: color } }),
  };
}

function fileFont({ bl, it, ul, st, fs, ff, cl }: IStyleData): Partial<Font> {
  const argb = argbOf(cl?.rgb || undefined);
  const name = ff?.split(",")[0]?.trim();
  return {
    ...PLAIN,
    ...(bl === BooleanNumber.TRUE ? { bold: true } : {}),
    ...(it === BooleanNumber.TRUE ? { italic: true } : {}),
    ...(ul?.s === BooleanNumber.TRUE ? { underline: true } : {}),
    ...(st?.s === BooleanNumber.TRUE ? { strike: true } : {}),
    ...(fs === undefined ? {} : { size: fs }),
    ...(name ? { name, scheme: "none" as const } : {}),
    ...(argb === undefined ? {} : { color: { argb } }),
  };
}

function fileAlignment({ ht, vt, tb }: IStyleData): Partial<Alignment> {
  const horizontal = nameOf(ACROSS, ht || undefined);
  const vertical = nameOf(DOWN, vt || undefined);
  return {
    ...(horizontal === undefined ? {} : { horizontal }),
    ...(vertical === undefined ? {} : { vertical }),
    ...(tb === WrapStrategy.WRAP ? { wrapText: true } : {}),
  };
}

function formatCode(format: Cell["numFmt"]): string {
  const code = typeof format === "object" ? format.formatCode : format;
  return code || "General";
}

/**
 * The style of a cell of a file, as far as the grid shows it: font, colors, borders, alignment, number format.
 *
 * @param cell - The cell.
 * @returns The style in the grid; undefined for a plain cell.
 */
export function gridStyle(cell: Cell): IStyleData | undefined {
  const { font, fill, alignment, border } = cell;
  const numberFormat = formatCode(cell.numFmt);
  const isSolid = fill?.type === "pattern" && fill.pattern === "solid";
  const ground = isSolid ? rgbOf(fill.fgColor) : undefined;
  const horizontal = ACROSS[alignment?.horizontal as keyof typeof ACROSS];
  const vertical = DOWN[alignment?.vertical as keyof typeof DOWN];
  const borders = gridBorders(border);
  const style: IStyleData = {
    ...gridFont(font),
    ...(ground === undefined ? {} : { bg: { rgb: ground } }),
    ...(horizontal === undefined ? {} : { ht: horizontal }),
    ...(vertical === undefined ? {} : { vt: vertical }),
    ...(alignment?.wrapText ? { tb: WrapStrategy.WRAP } : {}),
    ...(borders === undefined ? {} : { bd: borders }),
    ...(numberFormat === "General" ? {} : { n: { pattern: numberFormat } }),
  };
  return Object.keys(style).length > 0 ? style : undefined;
}

const FONT_KEYS = ["bl", "it", "ul", "st", "fs", "ff", "cl"] as const;
const ALIGNMENT_KEYS = ["ht", "vt", "tb"] as const;

/**
 * Gives a cell of a file the style of a cell of the grid, where it has changed.
 *
 * @param cell - The cell of the file.
 * @param style - The grid's style.
 * @param before - The style in the grid when the file was opened. What has not changed keeps the parts that the grid does not show.
 */
export function giveLook(cell: Cell, style: IStyleData, before: IStyleData): void {
  const isChanged = (...keys: readonly (keyof IStyleData)[]): boolean =>
    keys.some((key) => JSON.stringify(style[key]) !== JSON.stringify(before[key]));
  if (isChanged(...FONT_KEYS)) cell.font = fileFont(style);
  if (isChanged(...ALIGNMENT_KEYS)) cell.alignment = fileAlignment(style);
  if (isChanged("bd")) cell.border = fileBorders(style.bd || undefined);
  if (isChanged("n")) cell.numFmt = style.n?.pattern ?? "General";
  if (!isChanged("bg")) return;
  const argb = argbOf(style.bg?.rgb || undefined);
  cell.fill =
    argb === undefined
      ? { type: "pattern", pattern: "none" }
      : { type: "pattern", pattern: "solid", fgColor: { argb } };
}
