import type { Workbook, Worksheet } from "@cj-tech-master/excelts";
import { DATE, ENTERED_COLUMNS, fillFormula, MONEY } from "../../addin/clientList";
import { cellAddress, columnLetters } from "../../host/cellAddress";
import type { SampleClient } from "./clients";
import { FILLED_COLUMNS, ROW_COLUMNS, SAMPLE_COLUMNS } from "./sampleColumns";
import { putFormula, styleHeadings, styleInput } from "./sheetStyle";
import { totalTaxCells } from "./totalTaxSheets";

/** The sheet's name, as references from other sheets spell it. */
export const CLIENTS_SHEET = "Clients";

const FIRST_ROW = 2;
/** The defined names of the sheet Assumptions. */
const SETTINGS = {
  "as-of date": "AsOf",
  "assumed rate": "AssumedRate",
  target: "Target",
  cushion: "Cushion",
};

/** The position of a heading in the client list, counted from 1. */
export function clientColumn(heading: string): number {
  const index = SAMPLE_COLUMNS.findIndex((column) => column.heading === heading);
  if (index < 0) throw new Error(`The client list has no column ${heading}.`);
  return index + 1;
}

/** The cells of a heading in the client list as an absolute reference, such as Clients!$A$2:$A$48. */
export function clientBlock(clients: readonly SampleClient[], heading: string): string {
  const letters = columnLetters(clientColumn(heading));
  const lastRow = FIRST_ROW + clients.length - 1;
  return `${CLIENTS_SHEET}!$${letters}$${FIRST_ROW}:$${letters}$${lastRow}`;
}

function enterRow(sheet: Worksheet, row: number, client: SampleClient): void {
  for (const [position, { heading, format, choices }] of ENTERED_COLUMNS.entries()) {
    const cell = sheet.getCell(row, position + 1);
    const value = client.get(heading) ?? null;
    cell.value = value;
    if (format !== undefined) cell.numFmt = value instanceof Date ? DATE : format;
    if (choices) {
      const list = `"${choices.join(",")}"`;
      cell.dataValidation = { type: "list", allowBlank: true, formulae: [list] };
    }
    if (heading !== "Notes") styleInput(cell);
  }
  const estimate = totalTaxCells(String(client.get("Client")));
  if (estimate) {
    const put = (heading: string, formula: string): void => {
      putFormula(sheet, cellAddress(row, clientColumn(heading)), formula, MONEY);
    };
    put("Estimated total tax", estimate.totalTax);
    put("Total payments", estimate.payments);
  }
}

function calculateColumns(sheet: Worksheet, lastRow: number): void {
  for (const { heading, formula, format } of FILLED_COLUMNS) {
    const number = clientColumn(heading);
    const whole = (name: string): string => {
      const letters = columnLetters(clientColumn(name));
      return `${letters}${FIRST_ROW}:${letters}${lastRow}`;
    };
    putFormula(sheet, cellAddress(FIRST_ROW, number), fillFormula(formula, SETTINGS, whole));
    for (let row = FIRST_ROW; row <= lastRow; row += 1) sheet.getCell(row, number).numFmt = format;
  }
  for (const { heading, formula, format } of ROW_COLUMNS) {
    const number = clientColumn(heading);
    for (let row = FIRST_ROW; row <= lastRow; row += 1) {
      const inRow = (name: string): string => cellAddress(row, clientColumn(name));
      putFormula(sheet, cellAddress(row, number), fillFormula(formula, SETTINGS, inRow), format);
    }
  }
}

/** Adds the client list: what the preparer enters, and beside it what the add-in calculates. */
export function addClientsSheet(workbook: Workbook, clients: readonly SampleClient[]): void {
  const sheet = workbook.addWorksheet(CLIENTS_SHEET, {
    views: [{ state: "frozen", xSplit: 1, ySplit: 1 }],
  });
  for (const [index, { heading, width }] of SAMPLE_COLUMNS.entries()) {
    sheet.getCell(1, index + 1).value = heading;
    sheet.getColumn(index + 1).width = width;
  }
  styleHeadings(sheet, 1, 46);
  for (const [index, client] of clients.entries()) enterRow(sheet, FIRST_ROW + index, client);
  calculateColumns(sheet, FIRST_ROW + clients.length - 1);
}
