import type { Cell, Workbook, Worksheet } from "@cj-tech-master/excelts";
import { type EnteredColumn, ENTERED_COLUMNS } from "../../addin/list/clientList";
import { DATE_FORMAT, MONEY_FORMAT } from "../../functions/cells/answerCell";
import { cellAddress, columnLetters } from "../../host/cellAddress";
import type { SampleClient } from "./clients";
import { setPage } from "./pageSetup";
import { type AnswerColumn, FIRST_ANSWERS, LAST_ANSWERS } from "./sampleColumns";
import { putFormula, setBold, styleFilledTable, styleHeading, styleInput } from "./sheetStyle";
import { colorByStatus, colorBySeverity, colorPassed } from "./statusColors";
import { totalTaxCells } from "./totalTaxSheets";

/** The sheet's name, as references from other sheets spell it. */
export const CLIENTS_SHEET = "Clients";
/** The first row with a client. */
export const FIRST_ROW = 2;

const [NAME, ...ENTERED] = ENTERED_COLUMNS;
const FIRST_ENTERED = 2 + FIRST_ANSWERS.length;
const FIRST_LAST_ANSWER = FIRST_ENTERED + ENTERED.length;
/** Every column from left to right: the name, the answers for a glance, what the preparer enters, and further answers. */
const COLUMNS = [NAME, ...FIRST_ANSWERS, ...ENTERED, ...LAST_ANSWERS].filter(
  (column): column is EnteredColumn | AnswerColumn => column !== undefined
);

/** The position of a heading in the client list, counted from 1; 0 if the list does not have it. */
export function clientColumn(heading: string): number {
  return COLUMNS.findIndex((column) => column.heading === heading) + 1;
}

function enterRow(sheet: Worksheet, row: number, client: SampleClient): void {
  for (const { heading, format, choices } of ENTERED_COLUMNS) {
    const cell = sheet.getCell(row, clientColumn(heading));
    const value = client.get(heading) ?? null;
    cell.value = value;
    const isText = typeof value === "string";
    if (isText && heading !== "Client") cell.alignment = { horizontal: "left", indent: 1 };
    if (format !== undefined) cell.numFmt = value instanceof Date ? DATE_FORMAT : format;
    if (choices) limitTo(cell, choices);
    if (heading === "Client") setBold(cell);
    if (heading !== "Notes") styleInput(cell);
  }
  const estimate = totalTaxCells(String(client.get("Client")));
  if (estimate) {
    const put = (heading: string, formula: string): void => {
      putFormula(sheet, cellAddress(row, clientColumn(heading)), formula, MONEY_FORMAT);
    };
    put("Estimated total tax", estimate.totalTax);
    put("Total payments", estimate.payments);
  }
}

function limitTo(cell: Cell, choices: readonly string[]): void {
  const list = `"${choices.join(",")}"`;
  cell.dataValidation = { type: "list", allowBlank: true, formulae: [list] };
}

function putAnswers(
  sheet: Worksheet,
  column: number,
  answers: readonly AnswerColumn[],
  lastRow: number
): void {
  const first = columnLetters(FIRST_ENTERED);
  const last = columnLetters(FIRST_LAST_ANSWER - 1);
  const chosen = answers.map(({ heading }) => `"${heading}"`).join(",");
  const list = `$${first}$1:$${last}$${lastRow}`;
  styleFilledTable(sheet, { row: 1, column }, { rows: lastRow, columns: answers.length });
  putFormula(
    sheet,
    cellAddress(1, column),
    `EXT.ROSTER(${list},2025,AsOf,AssumedRate,{${chosen}})`
  );
  for (const [position, { format }] of answers.entries())
    for (let row = FIRST_ROW; row <= lastRow && format !== undefined; row += 1)
      sheet.getCell(row, column + position).numFmt = format;
}

/**
 * Adds the client list: beside the names what the add-in answers, then what the preparer enters, then further answers. One ROSTER
 * formula fills each block of answers.
 */
export function addClientsSheet(workbook: Workbook, clients: readonly SampleClient[]): void {
  const sheet = workbook.addWorksheet(CLIENTS_SHEET, {
    views: [{ state: "frozen", xSplit: 1, ySplit: 1 }],
  });
  const lastRow = FIRST_ROW + clients.length - 1;
  for (const [index, { heading, width }] of COLUMNS.entries()) {
    sheet.getColumn(index + 1).width = width;
    const isEntered = index === 0 || (index + 1 >= FIRST_ENTERED && index + 1 < FIRST_LAST_ANSWER);
    if (!isEntered) continue;
    const cell = sheet.getCell(1, index + 1);
    cell.value = heading;
    styleHeading(cell);
  }
  sheet.getRow(1).height = 48;
  for (const [index, client] of clients.entries()) enterRow(sheet, FIRST_ROW + index, client);
  const cells = (heading: string): readonly [ref: string, first: string] => {
    const letters = columnLetters(clientColumn(heading));
    return [`${letters}${FIRST_ROW}:${letters}${lastRow}`, `$${letters}${FIRST_ROW}`];
  };
  colorByStatus(sheet, ...cells("Status"));
  colorBySeverity(sheet, ...cells("Severity"));
  colorPassed(sheet, ...cells("Next deadline"));
  putAnswers(sheet, 2, FIRST_ANSWERS, lastRow);
  putAnswers(sheet, FIRST_LAST_ANSWER, LAST_ANSWERS, lastRow);
  const lastPrinted = columnLetters(clientColumn("Paid with request"));
  setPage(sheet, { headingRows: "1:1", area: `A1:${lastPrinted}${lastRow}` });
}
