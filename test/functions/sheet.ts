/** A worksheet function as the host calls it. */
export type WorksheetFunction = (...cells: unknown[]) => unknown;

/** An error as the sheet shows it, with its sentence if it has one. */
export interface Refusal {
  readonly code: string;
  readonly message?: string | undefined;
}

/** The answer of a call, or the error it shows. Any other exception is a bug and stays one. */
export function answerOf(call: () => unknown): unknown {
  try {
    return call();
  } catch (thrown) {
    if (thrown instanceof CustomFunctions.Error) return thrown;
    throw thrown;
  }
}

/** What a function answers in one cell to single values and blocks; `undefined` stands for an argument left out, which the host sends as null. */
export function inCell(of: (...cells: never[]) => unknown, ...values: unknown[]): unknown {
  const cells = values.map((value) =>
    value === undefined ? null : Array.isArray(value) ? (value as unknown) : [[value]]
  );
  const answer = answerOf(() => (of as WorksheetFunction)(...cells));
  return Array.isArray(answer) && answer.length === 1 ? (answer as unknown[][])[0]?.[0] : answer;
}

/** Values one under the other, as the host passes a column. */
export const down = (...values: unknown[]): unknown[][] => values.map((value) => [value]);

/** Values side by side, as the host passes a row. */
export const across = (...values: unknown[]): unknown[][] => [values];

/** A day as a worksheet date of the 1900 system, in which 1970-01-01 is 25569. */
export function serial(day: string): number {
  const milliseconds = Date.parse(day);
  if (Number.isNaN(milliseconds)) throw new RangeError(`${day} is no day`);
  return milliseconds / 86_400_000 + 25_569;
}

/** Bad input, with its sentence. */
export const badInput = (message: string): Refusal => ({ code: "#VALUE!", message });

/** A figure that is not published or not held, with its sentence. */
export const notHeld = (message: string): Refusal => ({ code: "#N/A", message });

/** A range left out, as the host sends it. */
export const NONE = null as unknown as unknown[][];
