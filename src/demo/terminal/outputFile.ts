import { statSync, writeFileSync } from "node:fs";
import { dirname, format, parse } from "node:path";
import { UsageError } from "./commandLine";

/** The name of the recalculated workbook when the command line has none: in the same folder as the input. */
export function outputBeside(input: string): string {
  const { dir, name } = parse(input);
  return format({ dir, base: `${name}.recalculated.xlsx` });
}

/**
 * Checks that the output would not destroy anything.
 *
 * @param output - The file to write.
 * @param input - The workbook that is read, if any.
 * @param force - Whether an existing file may be replaced.
 * @throws UsageError when the output is the input itself, under any name or link, when it is a folder, or when it exists and may not
 *   be replaced.
 */
export function refuseOutput(output: string, input: string | undefined, force: boolean): void {
  const folder = dirname(output);
  if (statSync(folder, { throwIfNoEntry: false })?.isDirectory() !== true) {
    throw new UsageError(`The folder ${folder} does not exist.`);
  }
  const present = statSync(output, { throwIfNoEntry: false });
  if (present === undefined) return;
  const given = input === undefined ? undefined : statSync(input, { throwIfNoEntry: false });
  if (given !== undefined && given.ino === present.ino && given.dev === present.dev) {
    throw new UsageError(`${output} is the workbook itself. Enter another file name.`);
  }
  if (!present.isFile()) throw new UsageError(`${output} is not a file.`);
  if (!force) {
    throw new UsageError(`${output} already exists. Use --force to replace it.`);
  }
}

/** Writes the workbook. An existing file is replaced only with force. */
export function writeOutput(output: string, bytes: Uint8Array, force: boolean): void {
  try {
    writeFileSync(output, bytes, { flag: force ? "w" : "wx" });
  } catch (error) {
    throw new UsageError(`${output} could not be written: ${(error as Error).message}`);
  }
}
