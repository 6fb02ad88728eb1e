import { formulaCall } from "../../../src/addin/answers/formulaCall";
import { catalog } from "../../../src/functions/catalog";
import { marshalArgument, type BlankHabit } from "../../../src/host/argumentMarshalling";
import {
  OMITTED,
  type AnswerCell,
  type Argument,
  type CellValue,
} from "../../../src/host/cellValues";
import { metadata, type Parameter } from "../../contract/builtAddIn";
import { calls as contractCalls } from "../../contract/calls";
import type { CallResult, SentCall } from "./excelPage";

/** A call of a function: its id and what the formula has for each argument. */
export interface Call {
  readonly id: string;
  readonly given: readonly Argument[];
  /** The formula or the place in it, for the message of a failed test. */
  readonly about: string;
}

/** The shapes in which Excel sends an error cell. */
export type ErrorShape = "rich" | "older";

const parametersOf = (id: string): readonly Parameter[] =>
  metadata.functions.find((one) => one.id === id)?.parameters ?? [];

function callOf(formula: string): Call {
  const { id, values } = formulaCall(formula);
  const given = values.map((value): Argument =>
    value === undefined ? OMITTED : (value as Argument)
  );
  return { id, given, about: formula };
}

/** A call of every example of every function. */
export const EXAMPLES: readonly Call[] = Object.values(catalog).flatMap(({ examples }) =>
  examples.map(({ formula }) => callOf(formula))
);

/** The example with one argument replaced. Arguments that the example leaves out before it stay left out. */
function withArgument({ id, given, about }: Call, index: number, value: Argument): Call {
  const more = Array.from({ length: Math.max(0, index - given.length) }, (): Argument => OMITTED);
  const replaced: Argument[] = [
    ...given.slice(0, index),
    ...more,
    value,
    ...given.slice(index + 1),
  ];
  const name = parametersOf(id)[index]?.name ?? "";
  return { id, given: replaced, about: `${about} with ${name} ${JSON.stringify(value)}` };
}

/** Every example with a value in the place of each argument in turn. */
export const withEachArgument = (value: Argument): Call[] =>
  EXAMPLES.flatMap((example) =>
    parametersOf(example.id).map((_one, index) => withArgument(example, index, value))
  );

/** Every example with each value that the kind of an argument does not accept. */
export const NOT_ACCEPTED: readonly Call[] = EXAMPLES.flatMap((example) =>
  Object.values(catalog[example.id]?.arguments ?? {}).flatMap(({ notAccepted }, index) =>
    notAccepted.flatMap((written) => {
      const [value] = callOf(`=EXT.${example.id}(${written})`).given;
      return value === undefined || value === OMITTED ? [] : [withArgument(example, index, value)];
    })
  )
);

/** The calls with which the built functions are tested elsewhere. */
export const CONTRACT_CALLS: readonly Call[] = contractCalls.map(([id, ...values]) => ({
  id,
  given: values.map((value) => {
    const code = (value as { code?: unknown } | null)?.code;
    return typeof code === "string" ? { error: code } : (value as Argument);
  }),
  about: `${id} ${JSON.stringify(values)}`,
}));

const isErrorCell = (value: unknown): value is { readonly error: string } =>
  typeof value === "object" && value !== null && "error" in value;

/** An error cell as Excel sends it. */
function sentError(code: string, shape: ErrorShape): unknown {
  if (shape === "older") return { type: "CustomFunctionError", code };
  const value = { type: "Error", basicType: "Error", basicValue: code };
  return { value: JSON.stringify(value) };
}

/** A call as Excel sends it. */
export function sentCall(
  { id, given }: Call,
  blankHabit: BlankHabit = "null",
  shape: ErrorShape = "rich"
): SentCall {
  const habits = { blankHabit, allowErrorForDataTypeAny: true };
  const values = parametersOf(id).map((parameter, index) => {
    const argument = given[index] ?? (given[index] === null ? null : OMITTED);
    const marshal = (value: Argument): unknown => {
      if (!isErrorCell(value)) return marshalArgument(value, parameter as never, habits);
      const sent = sentError(value.error, shape);
      return parameter.dimensionality === "matrix" ? [[sent]] : sent;
    };
    return marshal(argument);
  });
  return [id, values];
}

/** The errors by the numbers that Microsoft's script gives to them. */
const CODES: Readonly<Record<string, string>> = {
  1: "#N/A",
  5: "#DIV/0!",
  6: "#NUM!",
  7: "#VALUE!",
  8: "#NULL!",
};

function cell(value: unknown): AnswerCell {
  if (typeof value !== "object" || value === null) return { value: value as never };
  const { type, basicValue, numberFormat, message } = value as Readonly<Record<string, unknown>>;
  if (type === "Error")
    return message === ""
      ? { error: String(basicValue) }
      : { error: String(basicValue), message: message as string };
  return { value: basicValue as never, numberFormat: numberFormat as string };
}

/** What came back of a call, as the stand-in host gives it: rows of cells. */
export function cellsOf([, succeeded, answer, errorCode]: CallResult): AnswerCell[][] {
  if (!succeeded) {
    const error = CODES[String(errorCode)] ?? `error ${String(errorCode)}`;
    return [[answer === "" ? { error } : { error, message: String(answer) }]];
  }
  if (!Array.isArray(answer)) return [[cell(answer)]];
  return (answer as unknown[][]).map((row) => row.map(cell));
}

/** The values of a column, one below the other. */
export const column = (values: readonly CellValue[]): CellValue[][] =>
  values.map((value) => [value]);
