import { Untouchable } from "./hostileCells";

/** No sentence is longer, whatever the arguments are: an argument is quoted by its first characters only. */
export const LONGEST_SENTENCE = 250;
/** Characters a cell of the sheet holds; the host refuses a longer answer. */
export const LONGEST_CELL = 32_767;
/** What turns, hides or cuts the text beside it: controls, marks of direction, halves of a character. */
const STEERING = /[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/u;
const DEEPEST = 5;

/** The codes of error cells among some arguments, however deep: these may pass through without a sentence. */
function codesIn(given: unknown, depth = 0): string[] {
  if (typeof given !== "object" || given === null || depth > DEEPEST) return [];
  try {
    const here = Object.values(given).filter(
      (value): value is string => typeof value === "string" && value.startsWith("#")
    );
    const code = "errorType" in given || ("type" in given && given.type === "Error");
    const deeper = Object.values(given).flatMap((value) => codesIn(value, depth + 1));
    return [...here, ...(code ? ["#VALUE!"] : []), ...deeper];
  } catch {
    return [];
  }
}

function faultOfSentence(sentence: unknown): string | undefined {
  const isSentence = typeof sentence === "string" && /^\S.{8,}[^.\s]\.$/su.test(sentence);
  if (!isSentence || sentence.includes("undefined")) return `no sentence: ${String(sentence)}`;
  if (STEERING.test(sentence)) return `a sentence that steers: ${JSON.stringify(sentence)}`;
  return sentence.length > LONGEST_SENTENCE
    ? `a sentence of ${String(sentence.length)} characters: ${sentence.slice(0, LONGEST_SENTENCE)}`
    : undefined;
}

function faultOfError(error: object, given: unknown): string | undefined {
  const { code, message } = error as { code?: unknown; message?: unknown };
  if (typeof code !== "string")
    return `an exception that is no error of the sheet${typeof message === "string" ? `: ${message}` : ""}`;
  if (message === undefined)
    return codesIn(given).includes(code) ? undefined : `${code} without a sentence`;
  if (code !== "#VALUE!" && code !== "#N/A") return `${code} with a sentence no host shows`;
  return faultOfSentence(message);
}

function faultOfCell(cell: unknown, given: unknown): string | undefined {
  if (typeof cell === "boolean") return undefined;
  if (typeof cell === "string")
    return cell.length > LONGEST_CELL ? `a text of ${String(cell.length)} characters` : undefined;
  if (typeof cell === "number")
    return Number.isFinite(cell) ? undefined : `the number ${String(cell)}`;
  return typeof cell === "object" && cell !== null
    ? faultOfError(cell, given)
    : `the value ${String(cell)}`;
}

/**
 * What is wrong with an answer: anything but one cell or a rectangular block of finite numbers, texts, yes/no and errors of the sheet.
 *
 * @param answer - What a function returned.
 * @param given - Its arguments: an error cell among them may pass through.
 * @returns The fault, or `undefined`.
 */
export function faultOfAnswer(answer: unknown, given: unknown): string | undefined {
  if (!Array.isArray(answer)) return faultOfCell(answer, given);
  if (answer.length === 0) return "no block";
  const rows = answer as unknown[];
  if (!rows.every((row) => Array.isArray(row))) return "a block whose rows are no rows";
  const block = rows as unknown[][];
  const width = block[0]?.length ?? 0;
  if (width === 0 || block.some((row) => row.length !== width)) return "a ragged block";
  return block
    .flat()
    .map((cell) => faultOfCell(cell, given))
    .find((fault) => fault !== undefined);
}

/**
 * What is wrong with what a function threw: anything but an error of the sheet. What an argument threw when it was read goes on as
 * it is.
 *
 * @param thrown - What it threw.
 * @param given - Its arguments.
 * @returns The fault, or `undefined`.
 */
export function faultOfThrown(thrown: unknown, given: unknown): string | undefined {
  if (thrown instanceof Untouchable) return undefined;
  return typeof thrown === "object" && thrown !== null
    ? faultOfError(thrown, given)
    : `${String(thrown)} was thrown`;
}
