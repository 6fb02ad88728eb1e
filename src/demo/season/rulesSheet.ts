import type { Workbook } from "@cj-tech-master/excelts";
import { DAY, putFormula, putLabel, setWidths, worksheetDate } from "./sheetStyle";

/** The sheet's name. */
export const RULES_SHEET = "Rules";

/** Adds what the answers rest on: the edition, and the source of the interest rate. */
export function addRulesSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet(RULES_SHEET);
  setWidths(sheet, [34, 60, 18, 18, 18]);
  putLabel(sheet, "A1", "Figure");
  sheet.getCell("B1").value = "underpayment-rate";
  putLabel(sheet, "A2", "Day");
  sheet.getCell("B2").value = worksheetDate("2026-04-15");
  sheet.getCell("B2").numFmt = DAY;
  putLabel(sheet, "A3", "Source of the figure on that day");
  putFormula(sheet, "B3", "EXT.SOURCE(B1,B2)");
  putLabel(sheet, "A4", "Figure is known through");
  putFormula(sheet, "B4", "EXT.KNOWNTHROUGH(B1)", DAY);
  putLabel(sheet, "A6", "Every table of the rules");
  putFormula(sheet, "A7", "EXT.RULETABLES()");
}
