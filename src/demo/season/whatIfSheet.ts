import type { Workbook } from "@cj-tech-master/excelts";
import { cellAddress } from "../../host/cellAddress";
import { addClientChoice, CHOICE } from "./clientChoice";
import {
  DAY,
  MONEY,
  putFormula,
  putLabel,
  setWidths,
  styleHeadings,
  styleInput,
  worksheetDate,
} from "./sheetStyle";

/** The sheet's name. */
export const WHAT_IF_SHEET = "What if";
/** Where the block of charges begins, its headings included. */
export const WHAT_IF_CORNER = { row: 14, column: 1 };

const SHARES = [0, 0.1, 0.25, 0.5, 0.75, 1];
const DAYS = ["2026-04-15", "2026-06-15", "2026-08-14", "2026-10-15", "2026-12-31"];

/** Adds the question what more paid with the request, or paid sooner, would save. */
export function addWhatIfSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet(WHAT_IF_SHEET);
  setWidths(sheet, [26, 16, 14, 14, 14, 14]);
  addClientChoice(sheet, "Bracken");
  putLabel(
    sheet,
    "A13",
    "Charges by extra payment with the request (down) and day the rest is paid (across)"
  );
  const { row: top, column: left } = WHAT_IF_CORNER;
  sheet.getCell(top, left).value = "Extra payment";
  for (const [index, day] of DAYS.entries()) {
    const cell = sheet.getCell(top, left + 1 + index);
    cell.value = worksheetDate(day);
    cell.numFmt = DAY;
  }
  styleHeadings(sheet, top, 20);
  for (const [index, share] of SHARES.entries()) {
    const row = top + 1 + index;
    putFormula(
      sheet,
      cellAddress(row, left),
      `ROUND(${share}*(${CHOICE.shortfall}-${CHOICE.paidWithRequest}),2)`,
      MONEY
    );
    styleInput(sheet.getCell(row, left));
    for (const position of DAYS.keys()) {
      const address = cellAddress(row, left + 1 + position);
      const day = `${cellAddress(top, left + 1 + position).replace(/\d+$/, "$$$&")}`;
      const paid = `${CHOICE.payments}+${CHOICE.paidWithRequest}+$A${row}`;
      const { taxYear, totalTax, filedOn, extended, state, filerType } = CHOICE;
      putFormula(
        sheet,
        address,
        `EXT.CHARGES(${taxYear},${totalTax},${paid},${day},${filedOn},${extended},${state},${filerType},AssumedRate)`,
        MONEY
      );
    }
  }
  const below = top + SHARES.length + 3;
  putLabel(sheet, cellAddress(below, left), "Paid and filed on the day, in one formula");
  const extras = `${cellAddress(top + 1, left)}:${cellAddress(top + SHARES.length, left)}`;
  const days = `${cellAddress(top, left + 1)}:${cellAddress(top, left + DAYS.length)}`;
  const { taxYear, totalTax, payments, paidWithRequest, extended, state, filerType } = CHOICE;
  putFormula(
    sheet,
    cellAddress(below + 1, left),
    `EXT.WHATIF(${taxYear},${totalTax},${payments}+${paidWithRequest},${extras},${days},${extended},${state},${filerType},AssumedRate)`
  );
}
