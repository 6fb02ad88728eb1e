/** A cell with an error. */
export interface ErrorCell {
  readonly error: string;
}

/** The content of a cell; `null` is a blank cell. */
export type CellValue = number | string | boolean | ErrorCell | null;

/** An argument that the formula omits, which differs from a blank cell. */
export const OMITTED = Symbol("omitted argument");

/** An argument of a worksheet function: omitted, one cell, or rows of cells. */
export type Argument = typeof OMITTED | CellValue | readonly (readonly CellValue[])[];

/** One cell of an answer: a value with its number format, or an error with its message. */
export interface AnswerCell {
  readonly value?: number | string | boolean;
  readonly numberFormat?: string;
  readonly error?: string;
  readonly message?: string;
}

/** Tells an error cell from every other value. */
export function isErrorCell(value: unknown): value is ErrorCell {
  return typeof value === "object" && value !== null && "error" in value;
}
