import type { Workbook } from "@cj-tech-master/excelts";
import { addClientChoice, CHOICE } from "./clientChoice";
import { putFormula, putLabel, setWidths } from "./sheetStyle";

/** The sheet's name. */
export const ONE_CLIENT_SHEET = "One client";

/** Adds one client's season, lines of the request and working of the charges, each one formula. */
export function addOneClientSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet(ONE_CLIENT_SHEET);
  setWidths(sheet, [46, 16, 16, 14, 30, 14, 16, 14, 44]);
  addClientChoice(sheet, "Sorrel");
  const { taxYear, state, filerType, totalTax, payments, paidWithRequest } = CHOICE;
  const { extended, paidOn, filedOn } = CHOICE;
  putLabel(sheet, "A13", "Dates of the season");
  putFormula(sheet, "A14", `EXT.CALENDAR(${taxYear},${state},${filerType})`);
  putLabel(sheet, "A30", "Lines of the request");
  putFormula(sheet, "A31", `EXT.LINES(${totalTax},${payments},${paidWithRequest},${filerType})`);
  putLabel(sheet, "A40", "Charges as planned, line by line");
  const paid = `${payments}+${paidWithRequest}`;
  putFormula(
    sheet,
    "A41",
    `EXT.CHARGELINES(${taxYear},${totalTax},${paid},${paidOn},${filedOn},${extended},${state},${filerType},AssumedRate)`
  );
}
