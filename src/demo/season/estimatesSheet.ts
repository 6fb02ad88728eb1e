import type { Workbook, Worksheet } from "@cj-tech-master/excelts";
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
export const ESTIMATES_SHEET = "Estimates";
/** Where the list of first estimates begins, its headings included. */
export const ESTIMATES_CORNER = { row: 3, column: 1 };

const HEADINGS = [
  "Client",
  "Status",
  "Tax expected 2026",
  "Tax 2025",
  "Income 2025",
  "Withholding 2026",
  "Overpayment applied",
  "Farmer",
  "Required 2026",
  "First estimate",
];

type Row = readonly [
  client: string,
  status: string,
  expected: number,
  prior: number | "",
  income: number,
  withholding: number,
  overpaymentApplied: number,
  farmerOrFisherman: string,
];

const ROWS: readonly Row[] = [
  ["Alder", "joint", 24000, 18250, 142000, 9000, 0, ""],
  ["Betony", "MFJ", 39000, 42300, 236000, 12000, 2000, ""],
  ["Celandine", "single", 36000, 33750, 151000, 31000, 0, ""],
  ["Gorse", "head", 15000, 14400, 98000, 12000, 0, ""],
  ["Marjoram", "HOH", 900, 0, 31000, 0, 0, ""],
  ["Nettle", "separate", 118000, 125000, 390000, 60000, 0, ""],
  ["Tansy", "S", 12000, 13300, 88000, 4000, 500, "yes"],
  ["Yarrow", "QSS", 21000, "", 103000, 8000, 0, ""],
];

const PAID: readonly (readonly [day: string, amount: number])[] = [
  ["2025-04-15", 2000],
  ["2025-07-10", 2500],
  ["2026-01-15", 3000],
];

function addFirstEstimates(sheet: Worksheet): void {
  const { row: top } = ESTIMATES_CORNER;
  putLabel(sheet, "A1", "First estimate of 2026, due the day the extension for 2025 is asked for");
  HEADINGS.forEach((heading, index) => (sheet.getCell(top, index + 1).value = heading));
  styleHeadings(sheet, top);
  ROWS.forEach((row, down) =>
    row.forEach((value, across) => {
      const cell = sheet.getCell(top + 1 + down, across + 1);
      if (value !== "") cell.value = value;
      if (across >= 2 && across <= 6) cell.numFmt = MONEY;
      styleInput(cell);
    })
  );
  const column = (letter: string): string => `${letter}${top + 1}:${letter}${top + ROWS.length}`;
  const shared = ["B", "C", "D", "E"].map(column).join(",");
  putFormula(sheet, `I${top + 1}`, `EXT.REQUIREDPAYMENT(2026,${shared},${column("H")})`, MONEY);
  putFormula(
    sheet,
    `J${top + 1}`,
    `EXT.FIRSTINSTALLMENT(2026,${shared},${column("F")},${column("G")},${column("H")})`,
    MONEY
  );
}

function addUnderpaidEstimates(sheet: Worksheet): void {
  putLabel(sheet, "A15", "Underpaid estimates of 2025: Betony");
  const facts: readonly (readonly [label: string, value: number])[] = [
    ["Tax 2025", 42300],
    ["Tax 2024", 38600],
    ["Income 2024", 171000],
    ["Withholding 2025", 24000],
  ];
  facts.forEach(([label, value], index) => {
    sheet.getCell(`A${16 + index}`).value = label;
    const cell = sheet.getCell(`B${16 + index}`);
    [cell.value, cell.numFmt] = [value, MONEY];
    styleInput(cell);
  });
  sheet.getCell("A20").value = "Required 2025";
  putFormula(sheet, "B20", `EXT.REQUIREDPAYMENT(2025,"MFJ",B16,B17,B18)`, MONEY);
  PAID.forEach(([day, amount], index) => {
    const [dayCell, amountCell] = [
      sheet.getCell(`D${17 + index}`),
      sheet.getCell(`E${17 + index}`),
    ];
    [dayCell.value, dayCell.numFmt] = [worksheetDate(day), DAY];
    [amountCell.value, amountCell.numFmt] = [amount, MONEY];
    styleInput(dayCell);
    styleInput(amountCell);
  });
  putLabel(sheet, "D16", "Paid on");
  putLabel(sheet, "E16", "Amount");
  sheet.getCell("A21").value = "Addition to tax";
  putFormula(sheet, "B21", "EXT.ESTPENALTY(2025,B20,B19,D17:E19,,,B16)", MONEY);
  putLabel(sheet, "A23", "Its working");
  putFormula(sheet, "A24", "EXT.ESTPENALTYLINES(2025,B20,B19,D17:E19,,,B16)");
}

/** Adds the new year's first estimates, and what the old year's cost. */
export function addEstimatesSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet(ESTIMATES_SHEET);
  setWidths(sheet, [24, 14, 16, 14, 14, 14, 14, 44, 14, 14]);
  addFirstEstimates(sheet);
  addUnderpaidEstimates(sheet);
}
