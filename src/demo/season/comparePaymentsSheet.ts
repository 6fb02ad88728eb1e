import type { Workbook } from "@cj-tech-master/excelts";
import { DATE, MONEY } from "../../addin/clientList";
import { cellAddress } from "../../host/cellAddress";
import { addClientChoice, CHOICE } from "./clientChoice";
import type { SampleClient } from "./clients";
import {
  putFormula,
  putLabel,
  setWidths,
  styleHeadings,
  styleInput,
  worksheetDate,
} from "./sheetStyle";

/** The sheet's name. */
export const COMPARE_PAYMENTS_SHEET = "Compare payments";
/** The corner of the table of penalties and interest, including its headings. */
export const COMPARE_PAYMENTS_CORNER = { row: 14, column: 1 };

/** Extra payments, as shares of the balance due that is left after the payment with the request. */
const SHARES = [0, 0.1, 0.25, 0.5, 0.75, 1];
const DATES = ["2026-04-15", "2026-06-15", "2026-08-14", "2026-10-15", "2026-12-31"];

/** Adds the penalties and interest for larger payments with the request, and for earlier and later payments of the balance. */
export function addComparePaymentsSheet(
  workbook: Workbook,
  clients: readonly SampleClient[]
): void {
  const sheet = workbook.addWorksheet(COMPARE_PAYMENTS_SHEET);
  setWidths(sheet, [26, 16, 14, 14, 14, 14]);
  addClientChoice(sheet, clients, "Bracken");
  putLabel(
    sheet,
    "A13",
    "Penalties and interest by extra payment with the request (down) and payment date of the balance (across)"
  );
  const { row: top, column: left } = COMPARE_PAYMENTS_CORNER;
  const { taxYear, totalTax, payments, paidWithRequest, filedOn, validExtension } = CHOICE;
  const filer = `${CHOICE.state},${CHOICE.filerType}`;
  sheet.getCell(top, left).value = "Extra payment";
  for (const [index, date] of DATES.entries()) {
    const cell = sheet.getCell(top, left + 1 + index);
    cell.value = worksheetDate(date);
    cell.numFmt = DATE;
  }
  styleHeadings(sheet, top, 20);
  for (const [index, share] of SHARES.entries()) {
    const row = top + 1 + index;
    const extra = `ROUND(${share}*(${CHOICE.balanceDue}-${paidWithRequest}),2)`;
    putFormula(sheet, cellAddress(row, left), extra, MONEY);
    styleInput(sheet.getCell(row, left));
    for (const position of DATES.keys()) {
      const paidOn = cellAddress(top, left + 1 + position).replace(/\d+$/, "$$$&");
      const paid = `${payments}+${paidWithRequest}+$A${row}`;
      putFormula(
        sheet,
        cellAddress(row, left + 1 + position),
        `EXT.CHARGES(${taxYear},${totalTax},${paid},${paidOn},${filedOn},${validExtension},${filer},AssumedRate)`,
        MONEY
      );
    }
  }
  const below = top + SHARES.length + 3;
  putLabel(sheet, cellAddress(below, left), "Filed and paid on the same date (one WHATIF formula)");
  const extras = `${cellAddress(top + 1, left)}:${cellAddress(top + SHARES.length, left)}`;
  const dates = `${cellAddress(top, left + 1)}:${cellAddress(top, left + DATES.length)}`;
  putFormula(
    sheet,
    cellAddress(below + 1, left),
    `EXT.WHATIF(${taxYear},${totalTax},${payments}+${paidWithRequest},${extras},${dates},${validExtension},${filer},AssumedRate)`
  );
}
