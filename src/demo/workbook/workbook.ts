import { readFileSync, statSync } from "node:fs";
import type { Workbook } from "@cj-tech-master/excelts";
import { type CellValue, isErrorCell } from "../../host/cellValues";
import { answerChanges } from "./answerChanges";
import { fileValue } from "./cellChange";
import { OwnFunctionNames } from "./ownFunctionNames";
import { patchedFile } from "./patchedFile";
import { recalculate } from "./recalculation";
import type { RecalculationReport } from "./recalculationReport";
import type { LoadedWorkbook } from "./readWorkbook";
import type { StandInHost } from "../../host/standInHost";
import { NotAWorkbook, openWorkbookFile } from "./workbookFile";

/** A recalculated workbook as a file. */
export interface RecalculatedWorkbook {
  readonly bytes: Uint8Array;
  readonly report: RecalculationReport;
}

function isSame(wanted: CellValue, written: CellValue): boolean {
  if (isErrorCell(wanted)) return isErrorCell(written);
  return wanted === written;
}

/** The first cell that does not have the value that it should have. */
function firstDifference(
  wanted: LoadedWorkbook,
  calculated: ReadonlySet<number>,
  written: LoadedWorkbook
): string | undefined {
  for (const [index, sheet] of wanted.sheets.entries()) {
    for (const [row, cells] of sheet.rows) {
      for (const [column, { content, ownFormula }] of cells) {
        const isAnswer = ownFormula !== undefined && calculated.has(ownFormula.site);
        const value = isAnswer ? fileValue(content) : content;
        const found = written.sheets[index]?.find(row, column)?.content ?? null;
        if (!isSame(value, found)) return `${sheet.name}, row ${row}, column ${column}`;
      }
    }
  }
  return wanted.formulas.length === written.formulas.length ? undefined : "the number of formulas";
}

/**
 * Calculates a workbook file. The result is the same file with other values, read again and compared before it is returned.
 *
 * @param path - The name of the file, for messages.
 * @param given - The content of the file.
 * @param host - The host of our functions.
 * @throws NotAWorkbook with the reason in one sentence.
 */
export function recalculateBytes(
  path: string,
  given: Uint8Array,
  host: StandInHost
): RecalculatedWorkbook {
  const names = new OwnFunctionNames(host.namespace, host.functions.keys());
  const { parts, loaded } = openWorkbookFile(path, given, names);
  try {
    const recalculation = recalculate(loaded, names, host);
    const { bytes, lostSignature } = patchedFile(parts, answerChanges(recalculation));
    const written = openWorkbookFile("The result", bytes, names);
    const difference = firstDifference(loaded, recalculation.calculated, written.loaded);
    if (difference !== undefined) throw new Error(`the result differs at ${difference}`);
    return { bytes, report: { ...recalculation.report, lostSignature } };
  } catch (cause) {
    const { message } = cause as Error;
    throw new NotAWorkbook(`${path} could not be calculated: ${message.replace(/\.$/, "")}.`, {
      cause,
    });
  }
}

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

/** Calculates a workbook of the workbook library, such as the sample, and returns the file to write. */
export async function recalculateWorkbook(
  workbook: Workbook,
  host: StandInHost
): Promise<RecalculatedWorkbook> {
  const made = await workbook.xlsx.writeBuffer();
  return recalculateBytes("The workbook", new Uint8Array(made as unknown as ArrayBuffer), host);
}
