/** The codes of error cells among some arguments, however deep: these may pass through without a sentence. */
function codesIn(given: unknown): string[] {
  if (typeof given !== "object" || given === null) return [];
  const here = Object.values(given).filter(
    (value): value is string => typeof value === "string" && value.startsWith("#")
  );
  const code = "errorType" in given ? ["#VALUE!"] : [];
  return [...here, ...code, ...Object.values(given).flatMap(codesIn)];
}

function faultOfError(error: object, given: unknown): string | undefined {
  const { code, message } = error as { code?: unknown; message?: unknown };
  if (typeof code !== "string") return "an exception that is no error of the sheet";
  if (message === undefined)
    return codesIn(given).includes(code) ? undefined : `${code} without a sentence`;
  if (code !== "#VALUE!" && code !== "#N/A") return `${code} with a sentence no host shows`;
  const isSentence = typeof message === "string" && /^\S.{8,}[^.\s]$/su.test(message);
  if (!isSentence || message.includes("undefined")) return `no sentence: ${String(message)}`;
  return message.length > 500 ? `a sentence of ${String(message.length)} characters` : undefined;
}

function faultOfCell(cell: unknown, given: unknown): string | undefined {
  if (typeof cell === "string" || typeof cell === "boolean") return undefined;
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
 * What is wrong with what a function threw: anything but an error of the sheet.
 *
 * @param thrown - What it threw.
 * @param given - Its arguments.
 * @returns The fault, or `undefined`.
 */
export function faultOfThrown(thrown: unknown, given: unknown): string | undefined {
  return typeof thrown === "object" && thrown !== null
    ? faultOfError(thrown, given)
    : `${String(thrown)} was thrown`;
}
