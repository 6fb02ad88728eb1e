import { readFileSync, statSync } from "node:fs";
import type { Workbook } from "@cj-tech-master/excelts";
import { NotAWorkbook, workbookOfBytes } from "./workbookBytes";

/** A workbook as it was read, with the bytes it was read from. */
export interface WorkbookFile {
  readonly workbook: Workbook;
  readonly bytes: Uint8Array;
}

function readBytes(path: string): Buffer {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found === undefined) throw new NotAWorkbook(`${path} does not exist.`);
  if (found.isDirectory()) throw new NotAWorkbook(`${path} is a folder, not a workbook.`);
  if (!found.isFile()) throw new NotAWorkbook(`${path} is not a file.`);
  try {
    return readFileSync(path);
  } catch (error) {
    throw new NotAWorkbook(`${path} cannot be read: ${(error as Error).message}.`);
  }
}

/** Opens an .xlsx workbook, or says in one sentence why it cannot. */
export async function readWorkbookFile(path: string): Promise<WorkbookFile> {
  const bytes = readBytes(path);
  return { workbook: await workbookOfBytes(path, bytes), bytes };
}
