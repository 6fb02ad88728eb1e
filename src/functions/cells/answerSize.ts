import type { AnswerTable } from "./answerCell";
import { InputError } from "./inputError";

/**
 * Characters of an answer that Excel takes. A request has a limit of 5 MB (OfficeDev/office-js, issues 4654 and 2786), and a larger
 * answer never arrives: the cell stays at `#BUSY!` and holds back others.
 */
const LARGEST_ANSWER = 4_800_000;
/** An answer of fewer cells is not measured: a cell with a format has about 70 characters, an error about 400. */
const CELLS_NOT_MEASURED = 10_000;
/** The number of rows in the sentence is rounded down to a multiple of this. */
const ROUND_ROWS = 100;

/**
 * An answer, unless it is too large for Excel.
 *
 * @param argument - The argument with the rows, for the error message.
 * @param answer - The rows.
 * @returns The same rows.
 * @throws InputError when Excel would not take the answer; the sentence says how to split the list.
 */
export function sizedAnswer(argument: string, answer: AnswerTable): AnswerTable {
  const rows = Math.max(answer.length, 1);
  const cells = rows * (answer[0]?.length ?? 1);
  if (cells < CELLS_NOT_MEASURED) return answer;
  const size = JSON.stringify(answer).length;
  if (size <= LARGEST_ANSWER) return answer;
  const units = answer.length === 1 ? cells : rows;
  const most = Math.floor((units * LARGEST_ANSWER) / size / ROUND_ROWS) * ROUND_ROWS;
  throw new InputError(
    argument,
    `The answer for ${units.toLocaleString("en-US")} rows is too large for Excel. Split the list into parts of at most ${most.toLocaleString("en-US")} rows.`
  );
}
