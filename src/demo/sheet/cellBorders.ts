import type { Border, BorderStyle, Borders } from "@cj-tech-master/excelts";
import { BorderStyleTypes, type IBorderData } from "@univerjs/core";
import { argbOf, rgbOf } from "./cellColor";

const LINES: Readonly<Record<BorderStyle, BorderStyleTypes>> = {
  thin: BorderStyleTypes.THIN,
  hair: BorderStyleTypes.HAIR,
  dotted: BorderStyleTypes.DOTTED,
  dashed: BorderStyleTypes.DASHED,
  dashDot: BorderStyleTypes.DASH_DOT,
  dashDotDot: BorderStyleTypes.DASH_DOT_DOT,
  double: BorderStyleTypes.DOUBLE,
  medium: BorderStyleTypes.MEDIUM,
  mediumDashed: BorderStyleTypes.MEDIUM_DASHED,
  mediumDashDot: BorderStyleTypes.MEDIUM_DASH_DOT,
  mediumDashDotDot: BorderStyleTypes.MEDIUM_DASH_DOT_DOT,
  slantDashDot: BorderStyleTypes.SLANT_DASH_DOT,
  thick: BorderStyleTypes.THICK,
};
const SIDES = { top: "t", right: "r", bottom: "b", left: "l" } as const;
const sides = Object.entries(SIDES) as [keyof typeof SIDES, "t" | "r" | "b" | "l"][];

/**
 * The borders of a cell of a file as the grid draws them.
 *
 * @param borders - The file's borders.
 * @returns The grid's; nothing where there are none.
 */
export function gridBorders(borders: Partial<Borders> | undefined): IBorderData | undefined {
  const drawn: IBorderData = {};
  for (const [side, letter] of sides) {
    const border = borders?.[side];
    if (border?.style === undefined) continue;
    drawn[letter] = { s: LINES[border.style], cl: { rgb: rgbOf(border.color) ?? "#000000" } };
  }
  return Object.keys(drawn).length > 0 ? drawn : undefined;
}

/**
 * The borders of a cell of the grid as a file stores them.
 *
 * @param drawn - The grid's borders.
 * @returns The file's.
 */
export function fileBorders(drawn: IBorderData | undefined): Partial<Borders> {
  const borders: Partial<Record<keyof typeof SIDES, Partial<Border>>> = {};
  for (const [side, letter] of sides) {
    const line = drawn?.[letter];
    const named = Object.entries(LINES).find(([, type]) => type === line?.s);
    if (!line || !named) continue;
    borders[side] = {
      style: named[0] as BorderStyle,
      color: { argb: argbOf(line.cl.rgb || undefined) ?? "FF000000" },
    };
  }
  return borders;
}
