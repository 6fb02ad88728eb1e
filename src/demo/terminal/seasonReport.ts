import {
  type Cell,
  getCellDisplayText,
  type Workbook,
  type Worksheet,
} from "@cj-tech-master/excelts";
import { cellAddress, columnNumber } from "../../host/cellAddress";
import { BOARD_SHEET, STAGES_CORNER } from "../season/boardSheet";
import { CLIENTS_SHEET, clientColumn } from "../season/clientsSheet";
import { SEASON_CLIENTS } from "../season/clients";
import { OVERALL_CORNER, TOTALS_SHEET } from "../season/totalsSheet";
import { ESTIMATES_CORNER, ESTIMATES_SHEET } from "../season/estimatesSheet";
import { LEDGER_CORNER, LEDGER_SHEET } from "../season/ledgerSheet";
import { WHAT_IF_CORNER, WHAT_IF_SHEET } from "../season/whatIfSheet";
import { type TextColumn, textTable } from "./textTable";

const SHOWN: readonly (readonly [heading: string, short: string])[] = [
  ["Client", "Client"],
  ["Tax year (or its last day)", "Tax year"],
  ["State", "State"],
  ["FilerType", "FilerType"],
  ["Due", "Due"],
  ["Extended due", "Extended"],
  ["Pay by", "Pay by"],
  ["Planned filed on", "Filed on"],
  ["Total tax (estimate)", "Total tax"],
  ["Payments so far", "Payments"],
  ["Paid with request", "With it"],
  ["Shortfall", "Shortfall"],
  ["Suggested payment", "Suggested"],
  ["Still to send", "To send"],
  ["Presumption met", "Presumed"],
  ["Filed in time", "In time"],
  ["Planned paid on", "Paid on"],
  ["Extended", "Ext."],
  ["Late filing alone", "Filed late"],
  ["Late payment alone", "Paid late"],
  ["Charges as planned", "Charges"],
  ["What to do", "What to do"],
];

function sheetOf(workbook: Workbook, name: string): Worksheet {
  const sheet = workbook.getWorksheet(name);
  if (sheet === undefined) throw new Error(`The sample holds no sheet ${name}.`);
  return sheet;
}

function isNumeric(cell: Cell): boolean {
  const value = cell.formula ? cell.result : cell.value;
  return typeof value === "number";
}

function block(
  sheet: Worksheet,
  headings: readonly string[],
  columns: readonly number[],
  firstRow: number,
  count: number,
  width: number
): string[] {
  const cells = Array.from({ length: count }, (_row, index) =>
    columns.map((column) => sheet.getCell(firstRow + index, column))
  );
  const shape: TextColumn[] = headings.map((heading, position) => ({
    heading,
    align: cells.some((row) => row[position] !== undefined && isNumeric(row[position]))
      ? "right"
      : "left",
  }));
  return textTable(
    shape,
    cells.map((row) => row.map((cell) => getCellDisplayText(cell))),
    width
  );
}

function clientLines(workbook: Workbook, width: number): string[] {
  const columns = SHOWN.map(([heading]) => columnNumber(clientColumn(heading)));
  const headings = SHOWN.map(([, short]) => short);
  const sheet = sheetOf(workbook, CLIENTS_SHEET);
  return block(sheet, headings, columns, 2, SEASON_CLIENTS.length, width);
}

function totalLines(workbook: Workbook, width: number): string[] {
  const sheet = sheetOf(workbook, TOTALS_SHEET);
  const { row, column } = OVERALL_CORNER;
  let count = 0;
  while (sheet.getCell(row + count, column).value !== null) count += 1;
  return block(sheet, ["Altogether", ""], [column, column + 1], row, count, width);
}

/** The rows and columns of a table on a sheet, from its corner as far as it is filled. */
function tableLines(
  sheet: Worksheet,
  { row, column }: { readonly row: number; readonly column: number },
  shown: (heading: string) => boolean,
  width: number
): string[] {
  const columns: number[] = [];
  let last = column;
  for (; sheet.getCell(row, last).value !== null; last += 1) {
    if (shown(getCellDisplayText(sheet.getCell(row, last)))) columns.push(last);
  }
  const headings = columns.map((number) => getCellDisplayText(sheet.getCell(row, number)));
  let count = 0;
  while (sheet.getCell(row + 1 + count, column).value !== null) count += 1;
  return block(sheet, headings, columns, row + 1, count, width);
}

const EVERY = (): boolean => true;
const UNSHOWN_OF_LEDGER = ["Source"];

function chosenClient(sheet: Worksheet): string {
  return getCellDisplayText(sheet.getCell(cellAddress(1, 2)));
}

function whatIfLines(workbook: Workbook, width: number): string[] {
  const sheet = sheetOf(workbook, WHAT_IF_SHEET);
  return [
    `What if ${chosenClient(sheet)} sent more with the request (down) and paid the rest on another day (across):`,
    "",
    ...tableLines(sheet, WHAT_IF_CORNER, EVERY, width),
  ];
}

function ledgerLines(workbook: Workbook, width: number): string[] {
  const sheet = sheetOf(workbook, LEDGER_SHEET);
  const shown = (heading: string): boolean => !UNSHOWN_OF_LEDGER.includes(heading);
  return [
    `If ${chosenClient(sheet)} pays in parts:`,
    "",
    ...tableLines(sheet, LEDGER_CORNER, shown, width),
  ];
}

function estimateLines(workbook: Workbook, width: number): string[] {
  const sheet = sheetOf(workbook, ESTIMATES_SHEET);
  return [
    "First estimates of the new year, due the same day:",
    "",
    ...tableLines(sheet, ESTIMATES_CORNER, EVERY, width),
  ];
}

function boardLines(workbook: Workbook, width: number): string[] {
  const sheet = sheetOf(workbook, BOARD_SHEET);
  return [
    `The season on ${getCellDisplayText(sheet.getCell("B1"))}, by stage:`,
    "",
    ...tableLines(sheet, STAGES_CORNER, EVERY, width),
  ];
}

/** The sample as lines for the terminal: the clients, the totals and the question what if. */
export function seasonReport(workbook: Workbook, width: number): string[] {
  return [
    ...clientLines(workbook, width),
    "",
    ...totalLines(workbook, width),
    "",
    ...boardLines(workbook, width),
    "",
    ...whatIfLines(workbook, width),
    "",
    ...ledgerLines(workbook, width),
    "",
    ...estimateLines(workbook, width),
  ];
}
