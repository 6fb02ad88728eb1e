const PIXELS_OF_A_CHARACTER = 7;
const PIXELS_OF_PADDING = 5;
const PIXELS_OF_A_POINT = 4 / 3;

/** The width of a column in pixels, from its width in characters as files store it. */
export function pixelsOfWidth(characters: number): number {
  return Math.round(characters * PIXELS_OF_A_CHARACTER + PIXELS_OF_PADDING);
}

/** The width of a column in characters, from its width in pixels. */
export function widthOfPixels(pixels: number): number {
  return (pixels - PIXELS_OF_PADDING) / PIXELS_OF_A_CHARACTER;
}

/** The height of a row in pixels, from its height in points as files store it. */
export function pixelsOfHeight(points: number): number {
  return Math.round(points * PIXELS_OF_A_POINT);
}

/** The height of a row in points, from its height in pixels. */
export function heightOfPixels(pixels: number): number {
  return pixels / PIXELS_OF_A_POINT;
}
