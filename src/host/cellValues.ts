/** The error codes a cell can show. */
export type ErrorCode =
  "#VALUE!" | "#N/A" | "#DIV/0!" | "#NUM!" | "#NULL!" | "#NAME?" | "#REF!" | "#SPILL!" | "#CALC!";

/** A cell that holds an error. */
export interface ErrorCell {
  readonly error: string;
}

/** What a cell holds when it is read; `null` is a blank cell. */
export type CellValue = number | string | boolean | ErrorCell | null;

/** Stands for an argument left out of a formula, which a blank cell is not. */
export const OMITTED = Symbol("omitted argument");

/** An argument of a worksheet function: left out, one cell, or rows of cells. */
export type Argument = typeof OMITTED | CellValue | readonly (readonly CellValue[])[];

/** One cell of an answer: a value with the format it asks for, or an error with its sentence. */
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
