import type { StandInHost } from "../../host/standInHost";
import { readWorkbookFile } from "./readWorkbookFile";
import { NotAWorkbook } from "./workbookBytes";
import { recalculateWorkbook, type RecalculatedWorkbook } from "./workbook";

/**
 * Opens a workbook file, calculates every formula in it, and returns the file to write.
 *
 * @throws NotAWorkbook with the reason in one sentence, when the file is not a workbook or the calculation fails.
 */
export async function recalculateFile(
  path: string,
  host: StandInHost
): Promise<RecalculatedWorkbook> {
  const { workbook, bytes } = await readWorkbookFile(path);
  try {
    return await recalculateWorkbook(workbook, host, bytes);
  } catch (cause) {
    const { message } = cause as Error;
    throw new NotAWorkbook(
      `${path} could not be calculated. The workbook library failed: ${message}.`,
      { cause }
    );
  }
}
