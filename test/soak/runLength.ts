import { say } from "./say";

/** Whether this is one of the long runs of `npm run soak`. */
export const isLongRun = process.env["RUN_LENGTH"] === "long";

/**
 * How many cases a check draws: a short slice among the tests, many in the long run.
 *
 * @param short - As many as take a few seconds.
 * @param long - As many as the long run takes.
 * @returns One of the two.
 */
export const runLength = (short: number, long: number): number => (isLongRun ? long : short);

/**
 * Tells what a long run did; among the tests it says nothing.
 *
 * @param line - A line in plain words.
 */
export function tell(line: string): void {
  if (isLongRun) say(line);
}
