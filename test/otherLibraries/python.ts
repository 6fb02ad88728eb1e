import { execFileSync, spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const script = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

/** The system's Python comes first: its packages are not seen by another one. */
const PLACES = [process.env["PYTHON_PATH"], "/usr/bin/python3", "python3"];
const hasLibraries = (place: string | undefined): place is string =>
  place !== undefined &&
  spawnSync(place, ["-c", "import openpyxl, xlsxwriter"], { stdio: "ignore" }).status === 0;
const python = PLACES.find(hasLibraries);

/**
 * Whether the tests with other workbook libraries run: where Python has them, and where they are required even if it does not, so that
 * they fail and say so.
 */
export const runsPython = python !== undefined || process.env["PYTHON_TESTS"] === "required";

/**
 * Runs one of the scripts of this folder.
 *
 * @param name - The name of the script.
 * @param words - Its arguments.
 * @returns What it prints, read as JSON.
 */
export function runPython(name: string, ...words: string[]): unknown {
  if (python === undefined)
    throw new Error(
      "These tests need the packages python3-openpyxl and python3-xlsxwriter of the system, or a Python with both in PYTHON_PATH."
    );
  const options = { encoding: "utf8", maxBuffer: 1e9 } as const;
  return JSON.parse(execFileSync(python, [script(name), ...words], options));
}

/** The cells of a workbook as openpyxl reads them, by sheet and address: what a formula came to, and what is in the cell. */
export interface ReadWorkbook {
  readonly error: string | null;
  readonly values: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  readonly contents: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
}

/** Opens a workbook with openpyxl. */
export function readWithOpenpyxl(path: string): ReadWorkbook {
  return runPython("readWorkbook.py", path) as ReadWorkbook;
}
