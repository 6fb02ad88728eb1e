import type { StandInHost } from "../../host/standInHost";
import { readWorkbookFile } from "./readWorkbookFile";
import { NotAWorkbook } from "./workbookBytes";
import { recalculateWorkbook, type RecalculatedWorkbook } from "./workbook";

/**
 * Opens a workbook file, calculates every formula in it and gives the file to be written.
 *
 * @throws NotAWorkbook in one sentence when the file is none, or holds what the calculation fails at.
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
      `${path} cannot be calculated here: the workbook library fails at something in it (${message}).`,
      { cause }
    );
  }
}
