import type { StandInHost } from "../host/standInHost";
import { readWorkbookFile } from "./readWorkbookFile";
import { recalculateWorkbook, type RecalculatedWorkbook } from "./workbook";

/** Opens a workbook file, calculates every formula in it and gives the file to be written. */
export async function recalculateFile(
  path: string,
  host: StandInHost
): Promise<RecalculatedWorkbook> {
  const { workbook, bytes } = await readWorkbookFile(path);
  return recalculateWorkbook(workbook, host, bytes);
}
