import { dateToExcel, Workbook } from "@cj-tech-master/excelts";
import { createFormulaSyntaxProbe } from "@cj-tech-master/excelts/formula";
import { zipSync } from "fflate";
import { type CellValue, isErrorCell } from "../../host/cellValues";
import { NotAWorkbook } from "../workbook/workbookFile";
import type { PackageParts } from "../workbook/workbookPackage";

/** A value of the workbook library as a plain cell value: a date as its serial number, formatted text as plain text. */
export function plainValue(value: unknown): CellValue {
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") {
    return value;
  }
  if (value instanceof Date) return dateToExcel(value, false);
  if (isErrorCell(value)) return { error: value.error };
  if (typeof value !== "object" || value === null) return null;
  if ("richText" in value) {
    return (value.richText as { text: string }[]).map((run) => run.text).join("");
  }
  return "text" in value ? plainValue(value.text) : null;
}

/**
 * Reads the parts of a workbook with the workbook library, which knows the looks of cells.
 *
 * @param path - The name of the file, for the message.
 * @param parts - The parts of the file.
 * @throws NotAWorkbook when the library fails.
 */
export async function libraryWorkbook(path: string, parts: PackageParts): Promise<Workbook> {
  const workbook = new Workbook({ formulaSyntaxProbe: createFormulaSyntaxProbe() });
  try {
    await workbook.xlsx.load(zipSync(Object.fromEntries(parts), { level: 0 }));
  } catch (error) {
    throw new NotAWorkbook(`${path} could not be read as a workbook: ${(error as Error).message}`);
  }
  // The library writes a reference to the theme it has read, even to a theme that does not exist.
  if (![...parts.keys()].some((name) => name.startsWith("xl/theme/"))) workbook.clearThemes();
  return workbook;
}
