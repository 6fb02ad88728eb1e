import { ruleTables } from "../../src/rules/ruleTables";

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

/** What a function answers in one cell to single values and ranges. `undefined` is an argument left out, which the host sends as null. */
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

/** A date as a worksheet date of the 1900 system, in which 1970-01-01 is 25569. */
export function serial(day: string): number {
  const milliseconds = Date.parse(day);
  if (Number.isNaN(milliseconds)) throw new RangeError(`${day} is not a date`);
  return milliseconds / 86_400_000 + 25_569;
}

/** Bad input, with its sentence. */
export const badInput = (message: string): Refusal => ({ code: "#VALUE!", message });

/** A figure that is not in the rule tables, with its sentence. */
export const notInTable = (message: string): Refusal => ({ code: "#N/A", message });

/** The title with which the sentences of a rule table begin. */
export function tableTitle(table: string): string {
  const found = ruleTables().get(table);
  if (!found) throw new RangeError(`${table} is not a rule table`);
  return found.title;
}

const noFigure = (table: string, date: string): string =>
  `${tableTitle(table)}: There is no figure for ${date}.`;

/** A date before the first that a rule table covers. */
export const beforeTable = (table: string, date: string, from: string): Refusal =>
  notInTable(
    `${noFigure(table, date)} The table begins on ${from} (rules/${table}.json). Use the official text of that time.`
  );

/** A date after the last that a rule table covers. */
export const afterTable = (table: string, date: string, through: string): Refusal =>
  notInTable(
    `${noFigure(table, date)} The table covers dates through ${through} (rules/${table}.json). Check for a newer version of the add-in.`
  );

/** A range left out, as the host sends it. */
export const NONE = null as unknown as unknown[][];
