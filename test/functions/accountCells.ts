/** What the tests of the account and of estimates hand to worksheet functions, and what they expect back. */

/** A worksheet function as the host calls it. */
type WorksheetFunction = (...cells: unknown[]) => unknown;

/** A day as a worksheet date of the 1900 system, in which 1970-01-01 is 25569. */
export const serial = (day: string): number => Date.parse(day) / 86_400_000 + 25_569;

/** What a call answers, or the error it shows. Any other exception is a bug and stays one. */
export function answerOf(call: () => unknown): unknown {
  try {
    return call();
  } catch (thrown) {
    if (thrown instanceof CustomFunctions.Error) return thrown;
    throw thrown;
  }
}

/** What a row function answers in one cell to single values; `undefined` stands for an argument left out, which the host sends as null. */
export function inCell(of: (...cells: never[]) => unknown[][], ...values: unknown[]): unknown {
  const cells = values.map((value) => (value === undefined ? null : [[value]]));
  const answer = answerOf(() => (of as WorksheetFunction)(...cells));
  return Array.isArray(answer) ? (answer as unknown[][])[0]?.[0] : answer;
}

/** Bad input, with its sentence. */
export const badInput = (message: string): unknown => ({ code: "#VALUE!", message });

/** A range left out, as the host sends it. */
export const NONE = null as unknown as unknown[][];
