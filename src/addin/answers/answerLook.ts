import { answerCells, shownCell } from "./liveAnswer";

/** The shape of an answer, and how its cells look. */
export interface AnswerLook {
  /** Width of each column in characters. */
  readonly widths: readonly number[];
  /** The number format of each cell, row by row; `undefined` for none. */
  readonly formats: readonly (readonly (string | undefined)[])[];
}

/** A longer text may be cut off: the cells would not fit on the screen. A number is shown whole or not at all. */
const LONGEST_TEXT = 40;

function formatOf(cell: unknown): string | undefined {
  if (typeof cell !== "object" || cell === null || !("numberFormat" in cell)) return undefined;
  return typeof cell.numberFormat === "string" ? cell.numberFormat : undefined;
}

function widthOf(cell: unknown): number {
  const { text, kind } = shownCell(cell);
  if (kind === "number") return text.length;
  return kind === "error" ? 0 : Math.min(text.length, LONGEST_TEXT);
}

/**
 * The shape and the look of the answer to a formula.
 *
 * @param formula - One call of a worksheet function with plain values.
 * @throws SyntaxError for any other formula.
 */
export function answerLook(formula: string): AnswerLook {
  const rows = answerCells(formula);
  const columns = rows[0]?.map((_cell, column) => rows.map((row) => row[column])) ?? [];
  return {
    widths: columns.map((cells) => Math.max(...cells.map(widthOf))),
    formats: rows.map((row) => row.map(formatOf)),
  };
}
