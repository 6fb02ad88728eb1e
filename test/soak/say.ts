/**
 * Prints a line of a long run.
 *
 * @param line - The line.
 */
export function say(line: string): void {
  process.stdout.write(`${line}\n`);
}
