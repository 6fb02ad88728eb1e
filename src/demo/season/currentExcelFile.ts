import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

const WORKBOOK_PART = "xl/workbook.xml";
/** The version of the calculation that Excel 2019 and later write in a file. Excel recalculates a file of an earlier one when it opens it. */
const CURRENT_CALCULATION = "191029";
/** The files in a workbook have a fixed time, so that the same content gives the same bytes. */
const TIME = new Date(1980, 0, 1);

/**
 * A workbook file as a current Excel writes it, whose results Excel keeps when it opens the file before the add-in is loaded. The workbook
 * library always writes an earlier version of the calculation.
 *
 * @param bytes - The file.
 */
export function currentExcelFile(bytes: Uint8Array): Uint8Array {
  const parts = unzipSync(bytes);
  const workbook = parts[WORKBOOK_PART];
  if (workbook === undefined) return bytes;
  const text = strFromU8(workbook).replace(
    /(<calcPr\b[^>]*\bcalcId=")\d+"/,
    `$1${CURRENT_CALCULATION}"`
  );
  return zipSync({ ...parts, [WORKBOOK_PART]: strToU8(text) }, { mtime: TIME });
}
