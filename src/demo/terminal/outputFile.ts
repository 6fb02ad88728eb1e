import { statSync, writeFileSync } from "node:fs";
import { dirname, format, parse } from "node:path";
import { UsageError } from "./commandLine";

/** Where a recalculated workbook goes when nothing else is asked for: beside the one given. */
export function outputBeside(input: string): string {
  const { dir, name } = parse(input);
  return format({ dir, base: `${name}.recalculated.xlsx` });
}

/**
 * Refuses an output that would destroy something: the input itself, under whatever name or link, a
 * folder, or an older file unless force is given.
 */
export function refuseOutput(output: string, input: string | undefined, force: boolean): void {
  const folder = dirname(output);
  if (statSync(folder, { throwIfNoEntry: false })?.isDirectory() !== true) {
    throw new UsageError(`There is no folder ${folder} to write ${output} into.`);
  }
  const present = statSync(output, { throwIfNoEntry: false });
  if (present === undefined) return;
  const given = input === undefined ? undefined : statSync(input, { throwIfNoEntry: false });
  if (given !== undefined && given.ino === present.ino && given.dev === present.dev) {
    throw new UsageError(`${output} is the workbook itself; name another file to write to.`);
  }
  if (!present.isFile()) throw new UsageError(`${output} is not a file that can be written.`);
  if (!force) {
    throw new UsageError(`${output} exists already; --force writes over it.`);
  }
}

/** Writes the workbook, creating the file anew unless it may be written over. */
export function writeOutput(output: string, bytes: Uint8Array, force: boolean): void {
  try {
    writeFileSync(output, bytes, { flag: force ? "w" : "wx" });
  } catch (error) {
    throw new UsageError(`${output} cannot be written: ${(error as Error).message}`);
  }
}
