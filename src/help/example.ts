import { formulaCall } from "../addin/formulaCall";
import type { StandInHost } from "../host/standInHost";
import { type AnswerCell, type Argument, OMITTED } from "../host/cellValues";

/** An example with what the built function answers to it. */
export interface Example {
  readonly formula: string;
  /** What the comment says of the answer, after the formula. */
  readonly words: string;
  readonly answer: readonly (readonly AnswerCell[])[];
}

const WRITTEN = /^(=EXT\.[A-Z]+\((?:"[^"]*"|\{[^}]*\}|[^")])*\))\s+(.+)$/s;

function blockCell(value: unknown): Argument {
  return value === undefined ? null : (value as Argument);
}

/** A value of a formula as the stand-in host takes it. */
function argumentOf(value: unknown): Argument {
  if (value === undefined) return OMITTED;
  return Array.isArray(value)
    ? ((value as unknown[][]).map((row) => row.map(blockCell)) as Argument)
    : (value as Argument);
}

/**
 * What a formula answers.
 *
 * @param formula - One call of ours with plain values.
 * @param host - The built add-in in a host.
 * @returns Rows of cells.
 */
export function answerTo(formula: string, host: StandInHost): readonly (readonly AnswerCell[])[] {
  const { id, values } = formulaCall(formula);
  return host.call(id, values.map(argumentOf));
}

/**
 * The examples of a function with their answers.
 *
 * @param written - The example tag of its comment: formulas, each with words on its answer, parted by semicolons.
 * @param host - The built add-in in a host.
 * @returns The examples in order.
 * @throws SyntaxError for one that does not begin with a call of ours and go on in words.
 */
export function examplesOf(written: string, host: StandInHost): readonly Example[] {
  if (written === "") return [];
  return written.split(/;\s+(?==EXT\.)/).map((one) => {
    const [, formula, words] = WRITTEN.exec(one) ?? [];
    if (formula === undefined || words === undefined)
      throw new SyntaxError(`The example "${one}" is no formula with words on its answer.`);
    return { formula, words, answer: answerTo(formula, host) };
  });
}
