import type { AnsweredCall } from "../workbook/functionBridge";

/** What an error code of the sheet means where no function of ours has said it. */
const MEANINGS: Readonly<Record<string, string>> = {
  "#VALUE!": "An argument cannot be used, or a cell that the formula reads shows an error.",
  "#N/A": "Nothing was found, or a cell that the formula reads shows an error.",
  "#NAME?": "A function or a name in the formula is not known here.",
  "#DIV/0!": "Something is divided by zero or by an empty cell.",
  "#REF!": "The formula points at cells that are not there.",
  "#NUM!": "A number is beyond what can be calculated.",
  "#NULL!": "Two ranges that should meet do not meet.",
  "#CALC!": "The answer holds no cells.",
  "#CYCLE!": "The formula rests on its own answer.",
  "#SPILL!": "The cells that the answer would fill are not empty.",
  "#ERROR!": "The formula cannot be read.",
};

/** Whether a cell shows an error. */
export function isErrorCode(value: unknown): value is string {
  return typeof value === "string" && value in MEANINGS;
}

/**
 * The sentence that belongs to an error in a cell.
 *
 * @param code - The error the cell shows.
 * @param calls - Our functions' answers to the formula that fills the cell.
 * @param down - Rows from that formula's cell to this one.
 * @param across - Columns from that formula's cell to this one.
 * @returns What our function said, or else what the code means.
 */
export function errorSentence(
  code: string,
  calls: readonly AnsweredCall[],
  down: number,
  across: number
): string {
  const inPlace = calls.map(({ rows }) => rows[down]?.[across]);
  const nested = down === 0 && across === 0 ? calls.flatMap(({ rows }) => rows.flat()) : [];
  // The last one: a formula's outermost call is made last.
  const said = [...nested, ...inPlace].findLast((cell) => cell?.error === code && cell.message);
  return said?.message ?? MEANINGS[code] ?? "";
}
