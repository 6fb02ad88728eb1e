import { type Argument, type CellValue, type ErrorCell, isErrorCell, OMITTED } from "./cellValues";
import type { ParameterMetadata } from "./functionMetadata";

/** How a build of Excel passes a blank cell; builds differ. */
export type BlankHabit = "zero" | "null" | "empty text";

/** How the build of Excel that is imitated passes arguments. */
export interface MarshallingHabits {
  readonly blankHabit: BlankHabit;
  readonly allowErrorForDataTypeAny: boolean;
}

/** Thrown when an argument decides the answer, so that the function is not called. */
export class AnsweredByArgument extends Error {
  constructor(
    readonly errorCode: string,
    message = ""
  ) {
    super(message);
  }
}

const ERROR_TYPES: Readonly<Record<string, string>> = {
  "#VALUE!": "Value",
  "#N/A": "NotAvailable",
  "#DIV/0!": "Div0",
  "#NUM!": "Num",
  "#NULL!": "Null",
  "#NAME?": "Name",
  "#REF!": "Ref",
  "#SPILL!": "Spill",
  "#CALC!": "Calc",
};

function blank(habit: BlankHabit): number | string | null {
  if (habit === "zero") return 0;
  return habit === "null" ? null : "";
}

function errorObject(cell: ErrorCell): object {
  return {
    type: "Error",
    basicType: "Error",
    basicValue: cell.error,
    errorType: ERROR_TYPES[cell.error] ?? "Value",
  };
}

function toNumber(value: number | string | boolean): number {
  const number = typeof value === "string" && value.trim() === "" ? Number.NaN : Number(value);
  if (!Number.isFinite(number)) throw new AnsweredByArgument("#VALUE!");
  return number;
}

function toBoolean(value: number | string | boolean): boolean {
  if (typeof value !== "string") return Boolean(value);
  const text = value.trim().toUpperCase();
  if (text !== "TRUE" && text !== "FALSE") throw new AnsweredByArgument("#VALUE!");
  return text === "TRUE";
}

function marshalCell(value: CellValue, type: string, habits: MarshallingHabits): unknown {
  if (isErrorCell(value)) {
    if (type === "any" && habits.allowErrorForDataTypeAny) return errorObject(value);
    throw new AnsweredByArgument(value.error);
  }
  switch (type) {
    case "number":
      return value === null ? 0 : toNumber(value);
    case "string":
      return value === null
        ? ""
        : typeof value === "boolean"
          ? String(value).toUpperCase()
          : String(value);
    case "boolean":
      return value === null ? false : toBoolean(value);
    default:
      return value === null ? blank(habits.blankHabit) : value;
  }
}

/** Tells rows of cells from a single cell. */
export function isRows(argument: Argument): argument is readonly (readonly CellValue[])[] {
  return Array.isArray(argument);
}

/** Converts one argument to what the function receives; a single cell for a matrix becomes [[value]]. */
export function marshalArgument(
  argument: Argument,
  parameter: ParameterMetadata,
  habits: MarshallingHabits
): unknown {
  if (argument === OMITTED) return null;
  const type = parameter.type ?? "any";
  if (parameter.dimensionality === "matrix") {
    const rows = isRows(argument) ? argument : [[argument]];
    return rows.map((row) => row.map((cell) => marshalCell(cell, type, habits)));
  }
  const cell = isRows(argument) ? (argument[0]?.[0] ?? null) : argument;
  return marshalCell(cell, type, habits);
}
