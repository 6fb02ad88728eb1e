import { readFileSync, statSync } from "node:fs";
import type { StandInHost } from "../../host/standInHost";
import { recalculateBytes, type RecalculatedWorkbook } from "./workbook";
import { NotAWorkbook } from "./workbookFile";

function readBytes(path: string): Buffer {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found === undefined) throw new NotAWorkbook(`${path} does not exist.`);
  if (found.isDirectory()) throw new NotAWorkbook(`${path} is a folder, not a workbook.`);
  if (!found.isFile()) throw new NotAWorkbook(`${path} is not a file.`);
  try {
    return readFileSync(path);
  } catch (error) {
    throw new NotAWorkbook(`${path} could not be read: ${(error as Error).message}.`);
  }
}

/**
 * Opens a workbook file, calculates what has to be calculated in it, and returns the file to write.
 *
 * @throws NotAWorkbook with the reason in one sentence, when the file is not a workbook or the calculation fails.
 */
export function recalculateFile(path: string, host: StandInHost): RecalculatedWorkbook {
  return recalculateBytes(path, readBytes(path), host);
}
