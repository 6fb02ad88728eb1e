import type { Workbook } from "@cj-tech-master/excelts";
import { addClientChoice, CHOICE } from "./clientChoice";
import type { SampleClient } from "./clients";
import { putFormula, putLabel, setWidths } from "./sheetStyle";

/** Adds one client's deadlines, lines of the request, and calculation of penalties and interest, each as one formula. */
export function addClientDetailSheet(workbook: Workbook, clients: readonly SampleClient[]): void {
  const sheet = workbook.addWorksheet("Client detail");
  setWidths(sheet, [46, 16, 16, 14, 30, 14, 16, 14, 44]);
  addClientChoice(sheet, clients, "Sorrel");
  const { taxYear, state, filerType, totalTax, payments, paidWithRequest } = CHOICE;
  const { validExtension, paidOn, filedOn } = CHOICE;
  putLabel(sheet, "A13", "Deadlines");
  putFormula(sheet, "A14", `EXT.CALENDAR(${taxYear},${state},${filerType})`);
  putLabel(sheet, "A30", "Form 4868, lines 4 to 9");
  putFormula(
    sheet,
    "A31",
    `EXT.LINES(${taxYear},${totalTax},${payments},${paidWithRequest},${filerType})`
  );
  putLabel(sheet, "A40", "Penalties and interest (planned), line by line");
  const paid = `${payments}+${paidWithRequest}`;
  putFormula(
    sheet,
    "A41",
    `EXT.CHARGELINES(${taxYear},${totalTax},${paid},${paidOn},${filedOn},${validExtension},${state},${filerType},AssumedRate)`
  );
}
