import { formulaCall } from "../addin/answers/formulaCall";
import type { Example } from "../functions/worksheetFunction";
import { type AnswerCell, type Argument, OMITTED } from "../host/cellValues";
import type { StandInHost } from "../host/standInHost";

/** An example with the cells that the built function returns. */
export interface AnsweredExample extends Example {
  readonly cells: readonly (readonly AnswerCell[])[];
}

function rangeCell(value: unknown): Argument {
  return value === undefined ? null : (value as Argument);
}

/** A value of a formula as the stand-in host takes it. */
function argumentOf(value: unknown): Argument {
  if (value === undefined) return OMITTED;
  return Array.isArray(value)
    ? ((value as unknown[][]).map((row) => row.map(rangeCell)) as Argument)
    : (value as Argument);
}

/**
 * Answers an example with the built function.
 *
 * @param example - The example of a function.
 * @param host - A host with the built add-in.
 */
export function answeredExample(example: Example, host: StandInHost): AnsweredExample {
  const { id, values } = formulaCall(example.formula);
  return { ...example, cells: host.call(id, values.map(argumentOf)) };
}

/** Whether the answer fills several cells. */
export function fillsSeveralCells({ cells }: AnsweredExample): boolean {
  return cells.length > 1 || (cells[0]?.length ?? 0) > 1;
}
