/**
 * Prints a line of a long run.
 *
 * @param line - A line in plain words.
 */
export function say(line: string): void {
  process.stdout.write(`${line}\n`);
}
