import type { AnsweredCall } from "../workbook/functionBridge";

/** The meaning of an error code, for an error that does not come from one of our functions. */
const MEANINGS: Readonly<Record<string, string>> = {
  "#VALUE!": "An argument is not valid, or a cell that the formula reads shows an error.",
  "#N/A": "Nothing was found, or a cell that the formula reads shows an error.",
  "#NAME?": "A function or a name in the formula is not known.",
  "#DIV/0!": "The formula divides by zero or by an empty cell.",
  "#REF!": "The formula refers to cells that do not exist.",
  "#NUM!": "A number is too large or too small to calculate.",
  "#NULL!": "Two ranges that should intersect do not intersect.",
  "#CALC!": "The result has no cells.",
  "#CYCLE!": "The formula refers to its own result.",
  "#SPILL!": "The cells that the result would fill are not empty.",
  "#ERROR!": "The formula cannot be read.",
};

/** Whether a cell shows an error. */
export function isErrorCode(value: unknown): value is string {
  return typeof value === "string" && value in MEANINGS;
}

/**
 * The message for an error in a cell.
 *
 * @param code - The error the cell shows.
 * @param calls - The calls of our functions by the formula that fills the cell.
 * @param down - Rows from the cell of that formula to this one.
 * @param across - Columns from the cell of that formula to this one.
 * @returns The message of our function, or the meaning of the code.
 */
export function errorSentence(
  code: string,
  calls: readonly AnsweredCall[],
  down: number,
  across: number
): string {
  const inPlace = calls.map(({ rows }) => rows[down]?.[across]);
  const nested = down === 0 && across === 0 ? calls.flatMap(({ rows }) => rows.flat()) : [];
  // The outermost call of a formula is made last.
  const said = [...nested, ...inPlace].findLast((cell) => cell?.error === code && cell.message);
  return said?.message ?? MEANINGS[code] ?? "";
}
