import type { Workbook } from "@cj-tech-master/excelts";
import { DATE_FORMAT } from "../../functions/cells/answerCell";
import { setPage } from "./pageSetup";
import {
  putFormula,
  putInput,
  putLabel,
  putTitle,
  setWidths,
  styleFilledTable,
  worksheetDate,
} from "./sheetStyle";

/** Adds the rules behind the results: the source of the interest rate, and the list of all rule tables. */
export function addRuleTablesSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Rule tables");
  setWidths(sheet, [34, 76, 40, 14, 14, 10, 12]);
  putTitle(sheet, "Rule tables");
  putLabel(sheet, "A3", "Rule table");
  putInput(sheet, "B3", "underpayment-rate");
  putLabel(sheet, "A4", "Date");
  putInput(sheet, "B4", worksheetDate("2026-04-15"), DATE_FORMAT);
  putLabel(sheet, "A5", "Source on that date");
  putFormula(sheet, "B5", "EXT.SOURCE(B3,B4)");
  putLabel(sheet, "A6", "Covers through");
  putFormula(sheet, "B6", "EXT.KNOWNTHROUGH(B3)", DATE_FORMAT);
  sheet.getCell("B6").alignment = { horizontal: "right" };
  putLabel(sheet, "A8", "All rule tables");
  putFormula(sheet, "A9", "EXT.RULETABLES()");
  styleFilledTable(sheet, { row: 9, column: 1 }, { rows: 60, columns: 7 });
  sheet.getRow(9).height = 32;
  setPage(sheet, { headingRows: "9:9" });
}
