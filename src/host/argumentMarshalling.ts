import { type Argument, type CellValue, type ErrorCell, isErrorCell, OMITTED } from "./cellValues";
import type { ParameterMetadata } from "./functionMetadata";

/** How this build of the spreadsheet hands over a blank cell; builds in the field differ. */
export type BlankHabit = "zero" | "null" | "empty text";

/** How arguments are handed over by the build of the spreadsheet that is being imitated. */
export interface MarshallingHabits {
  readonly blankHabit: BlankHabit;
  readonly allowErrorForDataTypeAny: boolean;
}

/** Raised when an argument decides the answer without the function being called. */
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

/** Turns one argument into what crosses to the function; a single cell for a matrix becomes [[v]]. */
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
