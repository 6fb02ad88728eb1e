import type { Workbook } from "@cj-tech-master/excelts";
import { DATE } from "../../addin/clientList";
import { putFormula, putInput, putLabel, setWidths, worksheetDate } from "./sheetStyle";

/** Adds the rules behind the results: the source of the interest rate, and the list of all rule tables. */
export function addRuleTablesSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Rule tables");
  setWidths(sheet, [34, 60, 18, 18, 18]);
  putLabel(sheet, "A1", "Rule table");
  putInput(sheet, "B1", "underpayment-rate");
  putLabel(sheet, "A2", "Date");
  putInput(sheet, "B2", worksheetDate("2026-04-15"), DATE);
  putLabel(sheet, "A3", "Source on that date");
  putFormula(sheet, "B3", "EXT.SOURCE(B1,B2)");
  putLabel(sheet, "A4", "Covers through");
  putFormula(sheet, "B4", "EXT.KNOWNTHROUGH(B1)", DATE);
  putLabel(sheet, "A6", "All rule tables");
  putFormula(sheet, "A7", "EXT.RULETABLES()");
}
