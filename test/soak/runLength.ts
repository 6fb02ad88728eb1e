import { say } from "./say";

/** Whether this is one of the long runs of `npm run soak`. */
export const isLongRun = process.env["RUN_LENGTH"] === "long";

/**
 * The number of cases that a check tries: few among the tests, many in the long run.
 *
 * @param short - A number that takes a few seconds.
 * @param long - The number for the long run.
 * @returns The number for this run.
 */
export const runLength = (short: number, long: number): number => (isLongRun ? long : short);

/**
 * Prints what a long run did. Among the tests it prints nothing.
 *
 * @param line - The line.
 */
export function tell(line: string): void {
  if (isLongRun) say(line);
}
