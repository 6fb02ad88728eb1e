import { readFileSync, statSync } from "node:fs";
import { NotAWorkbook, type WorkbookFile, workbookOfBytes } from "./workbookBytes";

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

/** Opens an .xlsx workbook, or throws NotAWorkbook with the reason in one sentence. */
export async function readWorkbookFile(path: string): Promise<WorkbookFile> {
  return workbookOfBytes(path, readBytes(path));
}
