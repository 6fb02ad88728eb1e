import type { Workbook, Worksheet } from "@cj-tech-master/excelts";
import { WHOLE_NUMBER } from "../../addin/list/clientList";
import { DATE_FORMAT, MONEY_FORMAT } from "../../functions/cells/answerCell";
import { cellAddress, columnLetters } from "../../host/cellAddress";
import type { SampleClient } from "./clients";
import { clientBlock } from "./columnFormulasSheet";
import { setPage } from "./pageSetup";
import {
  putFormula,
  putLabel,
  putTitle,
  setWidths,
  styleHeadings,
  styleTotal,
  worksheetDate,
} from "./sheetStyle";

/** The sheet's name. */
export const TOTALS_SHEET = "Totals";
const FIRST_STATE_ROW = 5;
/** The corner of the totals of all clients. */
export const OVERALL_CORNER = { row: FIRST_STATE_ROW, column: 8 };

const WEEK_COLUMN = 11;
const WEEK_ROWS = 16;
const FIRST_WEEK = worksheetDate("2026-02-23");

function weekBlock(position: number): string {
  const letter = columnLetters(WEEK_COLUMN + position);
  return `${TOTALS_SHEET}!$${letter}$${FIRST_STATE_ROW}:$${letter}$${FIRST_STATE_ROW + WEEK_ROWS - 1}`;
}

/** The requests by week, as a chart refers to them. */
export const WEEKS = {
  corner: cellAddress(FIRST_STATE_ROW - 1, WEEK_COLUMN),
  labels: weekBlock(0),
  requests: weekBlock(2),
};

const SUMMED = [
  "Balance due",
  "Suggested payment",
  "Remaining to pay",
  "Penalties and interest (planned)",
];

/** Adds the totals of the firm, by state and for all clients. */
export function addTotalsSheet(workbook: Workbook, clients: readonly SampleClient[]): void {
  const sheet = workbook.addWorksheet(TOTALS_SHEET, { views: [{ state: "frozen", ySplit: 4 }] });
  setWidths(sheet, [14, 10, 16, 16, 16, 16, 4, 40, 26, 4, 10, 12, 12]);
  putTitle(sheet, `="Totals of all clients, as of "&TEXT(AsOf,"${DATE_FORMAT}")`);
  const block = (heading: string): string => clientBlock(clients, heading);
  addStates(sheet, clients, block);
  addOverall(sheet, block);
  addWeeks(sheet, block("Requested on"));
  styleHeadings(sheet, FIRST_STATE_ROW - 1, 48);
  setPage(sheet, { headingRows: `1:${FIRST_STATE_ROW - 1}` });
}

function addWeeks(sheet: Worksheet, requested: string): void {
  putLabel(sheet, cellAddress(3, WEEK_COLUMN), "Requests by week");
  for (const [index, heading] of ["Week", "From", "Requests"].entries())
    sheet.getCell(FIRST_STATE_ROW - 1, WEEK_COLUMN + index).value = heading;
  for (let week = 0; week < WEEK_ROWS; week += 1) {
    const row = FIRST_STATE_ROW + week;
    const from = cellAddress(row, WEEK_COLUMN + 1);
    if (week === 0) sheet.getCell(from).value = FIRST_WEEK;
    else putFormula(sheet, from, `${cellAddress(row - 1, WEEK_COLUMN + 1)}+7`);
    sheet.getCell(from).numFmt = DATE_FORMAT;
    // Text, because a chart over dates would leave room for each date.
    putFormula(sheet, cellAddress(row, WEEK_COLUMN), `TEXT(${from},"mmm d")`);
    const inWeek = `COUNTIFS(${requested},">="&${from},${requested},"<"&${from}+7)`;
    putFormula(sheet, cellAddress(row, WEEK_COLUMN + 2), inWeek);
  }
}

function addStates(
  sheet: Worksheet,
  clients: readonly SampleClient[],
  block: (heading: string) => string
): void {
  putLabel(sheet, "A3", "By state");
  for (const [index, heading] of ["State", "Clients", ...SUMMED].entries())
    sheet.getCell(FIRST_STATE_ROW - 1, index + 1).value = heading;
  const entered = clients.map((client) => client.get("State") ?? "").map(String);
  const states = [...new Set(entered)].filter(Boolean).sort();
  for (const [index, state] of states.entries()) {
    const row = FIRST_STATE_ROW + index;
    sheet.getCell(`A${row}`).value = state;
    putFormula(sheet, `B${row}`, `COUNTIFS(${block("State")},A${row})`);
    for (const [position, heading] of SUMMED.entries()) {
      const sum = `SUMIFS(${block(heading)},${block("State")},$A${row})`;
      putFormula(sheet, cellAddress(row, position + 3), sum, MONEY_FORMAT);
    }
  }
  const total = FIRST_STATE_ROW + states.length;
  sheet.getCell(`A${total}`).value = "Not entered";
  putFormula(sheet, `B${total}`, `COUNTBLANK(${block("State")})`);
  for (const [position, heading] of SUMMED.entries()) {
    const column = columnLetters(position + 3);
    const listed = `SUM(${column}${FIRST_STATE_ROW}:${column}${total - 1})`;
    putFormula(sheet, `${column}${total}`, `SUM(${block(heading)})-${listed}`, MONEY_FORMAT);
    putFormula(sheet, `${column}${total + 1}`, `SUM(${block(heading)})`, MONEY_FORMAT);
  }
  sheet.getCell(`A${total + 1}`).value = "All clients";
  putFormula(sheet, `B${total + 1}`, `COUNTA(${block("Client")})`);
  styleTotal(sheet, total + 1, SUMMED.length + 2);
}

function addOverall(sheet: Worksheet, block: (heading: string) => string): void {
  putLabel(sheet, "H3", "All clients");
  for (const [index, heading] of ["Total", "Amount"].entries())
    sheet.getCell(FIRST_STATE_ROW - 1, 8 + index).value = heading;
  const planned = block("Penalties and interest (planned)");
  const lines: readonly (readonly [label: string, formula: string, format: string])[] = [
    ["Clients", `COUNTA(${block("Client")})`, WHOLE_NUMBER],
    ["Estimated total tax", `SUM(${block("Estimated total tax")})`, MONEY_FORMAT],
    ["Total payments", `SUM(${block("Total payments")})`, MONEY_FORMAT],
    ["Paid with requests", `SUM(${block("Paid with request")})`, MONEY_FORMAT],
    ["Balance due", `SUM(${block("Balance due")})`, MONEY_FORMAT],
    ["Suggested payments", `SUM(${block("Suggested payment")})`, MONEY_FORMAT],
    ["Remaining to pay", `SUM(${block("Remaining to pay")})`, MONEY_FORMAT],
    ["Penalties and interest (planned)", `SUM(${planned})`, MONEY_FORMAT],
    ["Clients with penalties or interest", `COUNTIFS(${planned},">0")`, WHOLE_NUMBER],
    ["Highest penalties and interest of a client", `MAX(${planned})`, MONEY_FORMAT],
    ["Client with the highest amount", `XLOOKUP(I14,${planned},${block("Client")})`, "General"],
    ["Clients not meeting the 90% test", `COUNTIFS(${block("90% test met")},"no")`, WHOLE_NUMBER],
    ["Last extended due date", `MAX(${block("Extended due date")})`, DATE_FORMAT],
    ["Last extended due date (long form)", 'TEXT(I17,"dddd, mmmm d, yyyy")', "General"],
  ];
  for (const [index, [label, formula, format]] of lines.entries()) {
    const row = FIRST_STATE_ROW + index;
    sheet.getCell(`H${row}`).value = label;
    putFormula(sheet, `I${row}`, formula, format);
  }
}
