/**
 * A color of a file as the grid needs it. Colors of the theme of the file are not supported.
 *
 * @param color - The file's color.
 * @returns A color such as #1f3a4d; undefined for a color of the theme.
 */
export function rgbOf(color: { readonly argb?: string } | undefined): string | undefined {
  return color?.argb === undefined ? undefined : `#${color.argb.slice(-6).toLowerCase()}`;
}

function hex(part: string): string {
  return Number(part).toString(16).padStart(2, "0");
}

/**
 * A color of the grid as a file stores it.
 *
 * @param rgb - A color such as #1f3a4d or rgb(31,58,77).
 * @returns A color such as FF1F3A4D; undefined for a text that is not a plain color.
 */
export function argbOf(rgb: string | undefined): string | undefined {
  const parts = /^rgb\(\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*\)$/.exec(rgb ?? "")?.slice(1);
  const digits = parts?.map(hex).join("") ?? /^#([0-9a-f]{6})$/i.exec(rgb ?? "")?.[1];
  return digits === undefined ? undefined : `FF${digits.toUpperCase()}`;
}
