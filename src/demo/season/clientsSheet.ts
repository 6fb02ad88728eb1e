import type { Workbook, Worksheet } from "@cj-tech-master/excelts";
import { cellAddress, columnLetters } from "../../host/cellAddress";
import { TYPED_COLUMNS, WORKED_COLUMNS } from "./clientColumns";
import { SEASON_CLIENTS } from "./clients";
import { estimateOf } from "./estimateSheets";
import { DAY, MONEY, putFormula, styleHeadings, styleInput } from "./sheetStyle";

/** The sheet's name, as references from other sheets spell it. */
export const CLIENTS_SHEET = "Clients";

const FIRST_ROW = 2;
const LAST_ROW = FIRST_ROW + SEASON_CLIENTS.length - 1;

/** A column of the client list as an absolute block, such as Clients!$A$2:$A$43. */
export function clientBlock(letter: string): string {
  return `${CLIENTS_SHEET}!$${letter}$${FIRST_ROW}:$${letter}$${LAST_ROW}`;
}

/** The column of a heading in the client list, as a letter. */
export function clientColumn(heading: string): string {
  const headings = [...TYPED_COLUMNS, ...WORKED_COLUMNS].map((column) => column.heading);
  const index = headings.indexOf(heading);
  if (index < 0) throw new Error(`The client list has no column ${heading}.`);
  return columnLetters(index + 1);
}

function fill(formula: string, row: number | undefined): string {
  return formula.replaceAll(/\{([A-Z]+)\}/g, (_whole, letter: string) =>
    row === undefined ? `${letter}${FIRST_ROW}:${letter}${LAST_ROW}` : `${letter}${row}`
  );
}

function typeRows(sheet: Worksheet): void {
  for (const [index, client] of SEASON_CLIENTS.entries()) {
    const row = FIRST_ROW + index;
    for (const [position, column] of TYPED_COLUMNS.entries()) {
      const cell = sheet.getCell(row, position + 1);
      const value = column.value(client);
      cell.value = value;
      const format = column.format !== undefined && value instanceof Date ? DAY : column.format;
      if (format !== undefined) cell.numFmt = format;
      if (column.heading !== "About") styleInput(cell);
    }
    const estimate = estimateOf(client.client);
    if (estimate) {
      putFormula(sheet, `${clientColumn("Total tax (estimate)")}${row}`, estimate.totalTax, MONEY);
      putFormula(sheet, `${clientColumn("Payments so far")}${row}`, estimate.payments, MONEY);
    }
  }
}

function workOutColumns(sheet: Worksheet): void {
  for (const [position, column] of WORKED_COLUMNS.entries()) {
    const number = TYPED_COLUMNS.length + position + 1;
    for (let row = FIRST_ROW; row <= LAST_ROW; row += 1) {
      const address = cellAddress(row, number);
      if (!column.spills) putFormula(sheet, address, fill(column.formula, row), column.format);
      else sheet.getCell(address).numFmt = column.format;
    }
    if (column.spills) {
      putFormula(
        sheet,
        cellAddress(FIRST_ROW, number),
        fill(column.formula, undefined),
        column.format
      );
    }
  }
}

/** Adds the client list: what the preparer types, and beside it what follows from it. */
export function addClientsSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet(CLIENTS_SHEET, {
    views: [{ state: "frozen", xSplit: 1, ySplit: 1 }],
  });
  for (const [index, column] of [...TYPED_COLUMNS, ...WORKED_COLUMNS].entries()) {
    sheet.getCell(1, index + 1).value = column.heading;
    sheet.getColumn(index + 1).width = column.width;
  }
  styleHeadings(sheet, 1, 46);
  typeRows(sheet);
  workOutColumns(sheet);
}
