import type { Workbook } from "@cj-tech-master/excelts";
import { DATE_FORMAT, MONEY_FORMAT, PERCENT_FORMAT } from "../../functions/cells/answerCell";
import { addClientChoice, BELOW_CHOICE, CHOICE } from "./clientChoice";
import type { SampleClient } from "./clients";
import { setPage } from "./pageSetup";
import {
  putFormula,
  putInput,
  putLabel,
  setWidths,
  styleFilledTable,
  styleHeadings,
  worksheetDate,
} from "./sheetStyle";

/** The sheet's name. */
export const PARTIAL_PAYMENTS_SHEET = "Partial payments";
/** The corner of the payment history, including its headings. */
export const PARTIAL_PAYMENTS_CORNER = { row: BELOW_CHOICE + 13, column: 1 };

const FIRST_PAYMENT_ROW = BELOW_CHOICE + 2;
const PAYMENT_ROWS = 8;
const LATER_PAYMENTS: readonly (readonly [date: string, amount: number])[] = [
  ["2026-07-01", 1500],
  ["2026-05-20", 1000],
  ["2026-09-30", 3000],
  ["2026-12-01", 7000],
];

/** Adds a client who makes partial payments: the payments as entered, and the payment history that follows from them. */
export function addPartialPaymentsSheet(
  workbook: Workbook,
  clients: readonly SampleClient[]
): void {
  const sheet = workbook.addWorksheet(PARTIAL_PAYMENTS_SHEET);
  setWidths(sheet, [30, 40, 14, 14, 14, 16, 16, 16, 16, 14, 60]);
  addClientChoice(sheet, clients, "Partial payments", "Bracken");
  const { taxYear, totalTax, paidOnTime, validExtension, filedOn, filer, postponement } = CHOICE;

  putLabel(sheet, `A${BELOW_CHOICE}`, "Payments, in any order; blank rows are ignored");
  sheet.getCell(`A${BELOW_CHOICE + 1}`).value = "Date";
  sheet.getCell(`B${BELOW_CHOICE + 1}`).value = "Amount";
  styleHeadings(sheet, BELOW_CHOICE + 1, 20);
  putFormula(
    sheet,
    `A${FIRST_PAYMENT_ROW}`,
    `EXT.PAYBY(${taxYear},${filer},${postponement})`,
    DATE_FORMAT
  );
  putFormula(sheet, `B${FIRST_PAYMENT_ROW}`, paidOnTime, MONEY_FORMAT);
  const lastRow = FIRST_PAYMENT_ROW + PAYMENT_ROWS - 1;
  for (let row = FIRST_PAYMENT_ROW + 1; row <= lastRow; row += 1) {
    const [date, amount = null] = LATER_PAYMENTS[row - FIRST_PAYMENT_ROW - 1] ?? [];
    putInput(sheet, `A${row}`, date === undefined ? null : worksheetDate(date), DATE_FORMAT);
    putInput(sheet, `B${row}`, amount, MONEY_FORMAT);
  }

  const { row } = PARTIAL_PAYMENTS_CORNER;
  putLabel(sheet, `A${row - 1}`, "Payment history with penalties and interest to date");
  putFormula(
    sheet,
    `A${row}`,
    `EXT.LEDGER(${taxYear},${totalTax},A${FIRST_PAYMENT_ROW}:B${lastRow},${filedOn},${validExtension},${filer},AssumedRate,,${postponement})`
  );
  styleFilledTable(sheet, PARTIAL_PAYMENTS_CORNER, { rows: 14, columns: 11 });
  sheet.getRow(row).height = 48;

  putLabel(sheet, "D3", "Cost of delay as an annual rate");
  sheet.getCell("D4").value = "Filed and paid as planned";
  putFormula(
    sheet,
    "G4",
    `EXT.EFFECTIVERATE(${taxYear},${totalTax},${paidOnTime},${CHOICE.paidOn},${filedOn},${validExtension},${filer},AssumedRate,,${postponement})`,
    PERCENT_FORMAT
  );
  setPage(sheet, { hasClientTitle: true });
}
