import {
  closeSync,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { dirname, extname, format, parse } from "node:path";
import { UsageError } from "./commandLine";

/** The name of the recalculated workbook when the command line has none: in the same folder and with the same ending as the input. */
export function outputBeside(input: string): string {
  const { dir, name, ext } = parse(input);
  return format({ dir, base: `${name}.recalculated${ext || ".xlsx"}` });
}

/**
 * Checks that the output would not destroy anything.
 *
 * @param output - The file to write.
 * @param input - The workbook that is read, if any.
 * @param force - Whether an existing file may be replaced.
 * @throws UsageError when the output is the input itself, under any name or link, when it is a folder, when it exists and may not be
 *   replaced, or when it has another ending than the input, with which a spreadsheet would not open it.
 */
export function refuseOutput(output: string, input: string | undefined, force: boolean): void {
  const folder = dirname(output);
  if (statSync(folder, { throwIfNoEntry: false })?.isDirectory() !== true) {
    throw new UsageError(`The folder ${folder} does not exist.`);
  }
  const ending = extname(input ?? "").toLowerCase();
  if (ending !== "" && extname(output).toLowerCase() !== ending)
    throw new UsageError(`${output} must end in ${ending}, like the workbook itself.`);
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

const REASONS: Readonly<Record<string, string>> = {
  EACCES: "the folder is read-only or the file is in use",
  EBUSY: "the file is in use",
  EEXIST: "it already exists",
  ENOSPC: "the disk is full",
  EPERM: "the folder is read-only or the file is in use",
  EROFS: "the folder is read-only",
};

function writeWhole(file: string, bytes: Uint8Array): void {
  const handle = openSync(file, "wx");
  try {
    writeFileSync(handle, bytes);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/**
 * Writes the workbook under another name beside the output and then renames it, so that no half file remains. An existing file is
 * replaced only with force.
 *
 * @param output - The file.
 * @param bytes - Its content.
 * @param force - Whether an existing file is replaced.
 * @param write - Writes a new file.
 * @throws UsageError with the reason in one sentence.
 */
export function writeOutput(
  output: string,
  bytes: Uint8Array,
  force: boolean,
  write = writeWhole
): void {
  const isPresent = statSync(output, { throwIfNoEntry: false }) !== undefined;
  const target = isPresent ? realpathSync(output) : output;
  const beside = `${target}.${String(process.pid)}.part`;
  try {
    write(beside, bytes);
    if (!force && statSync(target, { throwIfNoEntry: false }) !== undefined)
      throw Object.assign(new Error(), { code: "EEXIST" });
    renameSync(beside, target);
  } catch (error) {
    const { code = "", message } = error as NodeJS.ErrnoException;
    throw new UsageError(`${output} could not be written: ${REASONS[code] ?? message}.`);
  } finally {
    rmSync(beside, { force: true });
  }
}
