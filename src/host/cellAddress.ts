const LETTERS = 26;

/** The number of a column from its letters, A being 1. */
export function columnNumber(letters: string): number {
  let number = 0;
  for (const letter of letters.toUpperCase()) number = number * LETTERS + letter.charCodeAt(0) - 64;
  return number;
}

/** The letters of a column from its number. */
export function columnLetters(column: number): string {
  let letters = "";
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / LETTERS)) {
    letters = String.fromCharCode(65 + ((rest - 1) % LETTERS)) + letters;
  }
  return letters;
}

/** A cell's address in the A1 style. */
export function cellAddress(row: number, column: number): string {
  return `${columnLetters(column)}${row}`;
}

/** The corners of an address such as A2:C9 or A2; undefined for anything else. */
export function readAddress(
  address: string
): { top: number; left: number; bottom: number; right: number } | undefined {
  const match = /^\$?([A-Z]{1,3})\$?(\d+)(?::\$?([A-Z]{1,3})\$?(\d+))?$/i.exec(address);
  if (match === null) return undefined;
  const [, left = "", top = "", right = left, bottom = top] = match;
  return {
    top: Number(top),
    left: columnNumber(left),
    bottom: Number(bottom),
    right: columnNumber(right),
  };
}
