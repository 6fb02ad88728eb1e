import type { Workbook } from "@cj-tech-master/excelts";
import { DATE_FORMAT, MONEY_FORMAT } from "../../functions/cells/answerCell";
import { cellAddress, columnLetters } from "../../host/cellAddress";
import { addClientChoice, BELOW_CHOICE, CHOICE } from "./clientChoice";
import type { SampleClient } from "./clients";
import { setPage } from "./pageSetup";
import {
  putFormula,
  putLabel,
  putNote,
  setWidths,
  styleFilledTable,
  styleHeadings,
  styleInput,
  styleTotal,
  worksheetDate,
} from "./sheetStyle";

/** The sheet's name. */
export const COMPARE_PAYMENTS_SHEET = "Compare payments";
/** The corner of the table of penalties and interest, including its headings. */
export const COMPARE_PAYMENTS_CORNER = { row: BELOW_CHOICE + 1, column: 1 };

/** Extra payments, as shares of the balance due that is left after the payment with the request. */
const SHARES = [0, 0.1, 0.25, 0.5, 0.75, 1];
const DATES = ["2026-04-15", "2026-06-15", "2026-08-14", "2026-10-15", "2026-12-31"];

/** Adds the penalties and interest for larger payments with the request, and for earlier and later payments of the balance. */
export function addComparePaymentsSheet(
  workbook: Workbook,
  clients: readonly SampleClient[]
): void {
  const sheet = workbook.addWorksheet(COMPARE_PAYMENTS_SHEET);
  setWidths(sheet, [30, 16, 16, 16, 16, 16]);
  addClientChoice(sheet, clients, "Compare payments", "Bracken");
  putLabel(
    sheet,
    `A${BELOW_CHOICE}`,
    "Penalties and interest by extra payment with the request (down) and payment date of the balance (across)"
  );
  const { row: top, column: left } = COMPARE_PAYMENTS_CORNER;
  const { taxYear, totalTax, paidOnTime, filedOn, validExtension, filer, postponement } = CHOICE;
  sheet.getCell(top, left).value = "Extra payment";
  for (const [index, date] of DATES.entries()) {
    const cell = sheet.getCell(top, left + 1 + index);
    cell.value = worksheetDate(date);
    cell.numFmt = DATE_FORMAT;
  }
  styleHeadings(sheet, top, 20);
  for (const [index, share] of SHARES.entries()) {
    const row = top + 1 + index;
    const extra = `ROUND(${share}*MAX(${totalTax}-${paidOnTime},0),2)`;
    putFormula(sheet, cellAddress(row, left), extra, MONEY_FORMAT);
    styleInput(sheet.getCell(row, left));
    for (const position of DATES.keys()) {
      const paidOn = cellAddress(top, left + 1 + position).replace(/\d+$/, "$$$&");
      const paid = `${paidOnTime}+$A${row}`;
      putFormula(
        sheet,
        cellAddress(row, left + 1 + position),
        `EXT.CHARGES(${taxYear},${totalTax},${paid},${paidOn},${filedOn},${validExtension},${filer},AssumedRate,,${postponement})`,
        MONEY_FORMAT
      );
    }
  }
  const total = top + SHARES.length + 1;
  sheet.getCell(total, left).value = "Total without extra payment";
  for (const position of DATES.keys()) {
    const letters = columnLetters(left + 1 + position);
    const sum = `MAX(${totalTax}-${paidOnTime},0)+${letters}${top + 1}`;
    putFormula(sheet, `${letters}${total}`, sum, MONEY_FORMAT);
  }
  styleTotal(sheet, total, left + DATES.length);
  putNote(sheet, `A${total + 1}`, "The total is the balance with its penalties and interest.");
  const below = total + 3;
  putLabel(sheet, cellAddress(below, left), "Filed and paid on the same date (one WHATIF formula)");
  const extras = `${cellAddress(top + 1, left)}:${cellAddress(top + SHARES.length, left)}`;
  const dates = `${cellAddress(top, left + 1)}:${cellAddress(top, left + DATES.length)}`;
  putFormula(
    sheet,
    cellAddress(below + 1, left),
    `EXT.WHATIF(${taxYear},${totalTax},${paidOnTime},${extras},${dates},${validExtension},${filer},AssumedRate,,${postponement})`
  );
  styleFilledTable(
    sheet,
    { row: below + 1, column: left },
    { rows: SHARES.length + 1, columns: DATES.length + 1 }
  );
  setPage(sheet, { hasClientTitle: true });
}
