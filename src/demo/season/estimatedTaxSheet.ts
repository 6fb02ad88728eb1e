import type { Workbook, Worksheet } from "@cj-tech-master/excelts";
import { DATE_FORMAT, MONEY_FORMAT } from "../../functions/cells/answerCell";
import { cellAddress } from "../../host/cellAddress";
import { setPage } from "./pageSetup";
import {
  putFormula,
  putInput,
  putLabel,
  putTitle,
  setWidths,
  styleFilledTable,
  styleHeadings,
  styleTotal,
  worksheetDate,
} from "./sheetStyle";

/** The sheet's name. */
export const ESTIMATED_TAX_SHEET = "2026 estimated tax";
/** The corner of the table of first installments, including its headings. */
export const FIRST_INSTALLMENTS_CORNER = { row: 3, column: 1 };

const HEADINGS = [
  "Client",
  "Filing status",
  "Expected 2026 tax",
  "2025 tax",
  "2025 AGI",
  "2026 withholding",
  "Overpayment applied",
  "Farmer or fisherman",
  "2026 required annual payment",
  "First installment",
];

type Row = readonly [
  client: string,
  filingStatus: string,
  expectedTax: number,
  priorYearTax: number | null,
  priorYearAgi: number | null,
  withholding: number,
  overpaymentApplied: number,
  farmerOrFisherman: "yes" | null,
];

const ROWS: readonly Row[] = [
  ["Alder", "MFJ", 24000, 18250, 142000, 9000, 0, null],
  ["Betony", "MFJ", 39000, 42300, 236000, 12000, 2000, null],
  ["Celandine", "single", 36000, 33750, 151000, 31000, 0, null],
  ["Gorse", "HOH", 15000, 14400, 98000, 12000, 0, null],
  ["Marjoram", "HOH", 900, 0, 31000, 0, 0, null],
  ["Nettle", "MFS", 118000, 125000, 390000, 60000, 0, null],
  ["Tansy", "single", 12000, 13300, 88000, 4000, 500, "yes"],
  ["Yarrow", "QSS", 21000, null, null, 8000, 0, null],
];

/** Estimated tax payments of 2025. */
const PAID: readonly (readonly [date: string, amount: number])[] = [
  ["2025-04-15", 2000],
  ["2025-07-10", 2500],
  ["2026-01-15", 3000],
];

function addFirstInstallments(sheet: Worksheet): void {
  const { row: top } = FIRST_INSTALLMENTS_CORNER;
  putTitle(sheet, "First 2026 estimated tax installment, due April 15, 2026 (not extended)");
  for (const [index, heading] of HEADINGS.entries()) sheet.getCell(top, index + 1).value = heading;
  styleHeadings(sheet, top);
  for (const [down, row] of ROWS.entries())
    for (const [across, value] of row.entries()) {
      const format = across >= 2 && across <= 6 ? MONEY_FORMAT : undefined;
      putInput(sheet, cellAddress(top + 1 + down, across + 1), value, format);
    }
  const column = (letter: string): string => `${letter}${top + 1}:${letter}${top + ROWS.length}`;
  const shared = ["B", "C", "D", "E"].map(column).join(",");
  putFormula(
    sheet,
    `I${top + 1}`,
    `EXT.REQUIREDPAYMENT(2026,${shared},${column("H")})`,
    MONEY_FORMAT
  );
  putFormula(
    sheet,
    `J${top + 1}`,
    `EXT.FIRSTINSTALLMENT(2026,${shared},${column("F")},${column("G")},${column("H")})`,
    MONEY_FORMAT
  );
  const total = top + ROWS.length + 1;
  sheet.getCell(`A${total}`).value = "All clients";
  putFormula(sheet, `J${total}`, `SUM(${column("J")})`, MONEY_FORMAT);
  styleTotal(sheet, total, HEADINGS.length);
}

function addPenalty(sheet: Worksheet): void {
  putLabel(sheet, "A15", "2025 estimated tax penalty: Betony");
  const facts: readonly (readonly [label: string, value: number])[] = [
    ["2025 tax", 42300],
    ["2024 tax", 38600],
    ["2024 AGI", 171000],
    ["2025 withholding", 24000],
  ];
  for (const [index, [label, value]] of facts.entries()) {
    sheet.getCell(`A${16 + index}`).value = label;
    putInput(sheet, `B${16 + index}`, value, MONEY_FORMAT);
  }
  sheet.getCell("A20").value = "2025 required annual payment";
  putFormula(sheet, "B20", 'EXT.REQUIREDPAYMENT(2025,"MFJ",B16,B17,B18)', MONEY_FORMAT);
  putLabel(sheet, "D16", "Paid on");
  putLabel(sheet, "E16", "Amount");
  for (const [index, [date, amount]] of PAID.entries()) {
    putInput(sheet, `D${17 + index}`, worksheetDate(date), DATE_FORMAT);
    putInput(sheet, `E${17 + index}`, amount, MONEY_FORMAT);
  }
  sheet.getCell("A21").value = "Estimated tax penalty";
  putFormula(sheet, "B21", "EXT.ESTPENALTY(2025,B20,B19,D17:E19,,,B16)", MONEY_FORMAT);
  putLabel(sheet, "A23", "Calculation of the penalty");
  putFormula(sheet, "A24", "EXT.ESTPENALTYLINES(2025,B20,B19,D17:E19,,,B16)");
  styleFilledTable(sheet, { row: 24, column: 1 }, { rows: 12, columns: 8 });
}

/** Adds the first installments of 2026, and the estimated tax penalty of one client for 2025. */
export function addEstimatedTaxSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet(ESTIMATED_TAX_SHEET);
  setWidths(sheet, [30, 14, 16, 14, 14, 14, 14, 20, 18, 16, 30]);
  addFirstInstallments(sheet);
  addPenalty(sheet);
  setPage(sheet);
}
