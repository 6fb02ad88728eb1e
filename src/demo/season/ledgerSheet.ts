import type { Workbook } from "@cj-tech-master/excelts";
import { addClientChoice, CHOICE } from "./clientChoice";
import {
  DAY,
  MONEY,
  PERCENT,
  putFormula,
  putLabel,
  setWidths,
  styleHeadings,
  styleInput,
  worksheetDate,
} from "./sheetStyle";

/** The sheet's name. */
export const LEDGER_SHEET = "Part payments";
/** Where the running account begins, its headings included. */
export const LEDGER_CORNER = { row: 26, column: 1 };

const FIRST_PAYMENT_ROW = 16;
const PAYMENT_ROWS = 8;
const LATER_PAYMENTS: readonly (readonly [day: string, amount: number])[] = [
  ["2026-07-01", 1500],
  ["2026-05-20", 1000],
  ["2026-09-30", 3000],
  ["2026-12-01", 7000],
];

/** Adds a client who pays in parts: the payments as typed, and the account they make. */
export function addLedgerSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet(LEDGER_SHEET);
  setWidths(sheet, [26, 52, 14, 14, 14, 16, 16, 16, 16, 44]);
  addClientChoice(sheet, "Bracken");
  const { taxYear, state, filerType, totalTax, payments, paidWithRequest, extended, filedOn } =
    CHOICE;

  putLabel(sheet, "A14", "Payments, in any order; empty rows are passed over");
  sheet.getCell("A15").value = "Day";
  sheet.getCell("B15").value = "Amount";
  styleHeadings(sheet, 15, 20);
  putFormula(sheet, `A${FIRST_PAYMENT_ROW}`, `EXT.PAYBY(${taxYear},${state},${filerType})`, DAY);
  putFormula(sheet, `B${FIRST_PAYMENT_ROW}`, `${payments}+${paidWithRequest}`, MONEY);
  const lastRow = FIRST_PAYMENT_ROW + PAYMENT_ROWS - 1;
  for (let row = FIRST_PAYMENT_ROW + 1; row <= lastRow; row += 1) {
    const payment = LATER_PAYMENTS[row - FIRST_PAYMENT_ROW - 1];
    const [day, amount] = [sheet.getCell(`A${row}`), sheet.getCell(`B${row}`)];
    if (payment) [day.value, amount.value] = [worksheetDate(payment[0]), payment[1]];
    [day.numFmt, amount.numFmt] = [DAY, MONEY];
    styleInput(day);
    styleInput(amount);
  }

  const { row } = LEDGER_CORNER;
  const rest = `${totalTax},A${FIRST_PAYMENT_ROW}:B${lastRow},${filedOn},${extended},${state},${filerType},AssumedRate`;
  putLabel(sheet, `A${row - 1}`, "The account");
  putFormula(sheet, `A${row}`, `EXT.LEDGER(${taxYear},${rest})`);

  putLabel(sheet, "D1", "What a year of delay costs");
  const paidOnTime = `${payments}+${paidWithRequest}`;
  const planned = `${CHOICE.paidOn},${filedOn},${extended},${state},${filerType},AssumedRate`;
  sheet.getCell("D2").value = "as planned, a year";
  putFormula(
    sheet,
    "F2",
    `EXT.EFFECTIVERATE(${taxYear},${totalTax},${paidOnTime},${planned})`,
    PERCENT
  );
}
