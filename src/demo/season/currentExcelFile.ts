import { packedParts } from "../workbook/patchedFile";
import { unpackedParts } from "../workbook/unpackedParts";
import { partText, putText, workbookPart } from "../workbook/workbookPackage";

/** The version of the calculation that Excel 2019 and later write in a file. Excel recalculates a file of an earlier one when it opens it. */
const CURRENT_CALCULATION = "191029";

/**
 * A workbook file as a current Excel writes it, whose results Excel keeps when it opens the file before the add-in is loaded. The workbook
 * library always writes an earlier version of the calculation.
 *
 * @param bytes - The file.
 */
export function currentExcelFile(bytes: Uint8Array): Uint8Array {
  const parts = unpackedParts(bytes);
  const workbook = workbookPart(parts);
  const text = partText(parts, workbook);
  putText(parts, workbook, text.replace(/(\bcalcId=")\d+"/, `$1${CURRENT_CALCULATION}"`));
  return packedParts(parts);
}
