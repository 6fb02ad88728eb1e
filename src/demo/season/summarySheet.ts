import type { Workbook, Worksheet } from "@cj-tech-master/excelts";
import { DATE, MONEY } from "../../addin/clientList";
import { STAGES } from "../../calculation/season/requestStage";
import { DEFAULT_HEADINGS } from "../../functions/season/rosterColumns";
import { cellAddress, columnLetters } from "../../host/cellAddress";
import type { SampleClient } from "./clients";
import { CLIENTS_SHEET, clientBlock, clientColumn } from "./clientsSheet";
import { putFormula, putLabel, setWidths, styleHeadings, worksheetDate } from "./sheetStyle";

/** The sheet's name. */
export const SUMMARY_SHEET = "Summary";
/** The corner of the client list that one formula fills, including its headings. */
const ROSTER_CORNER = { row: 22, column: 1 };
/** The corner of the number of clients by status, including its headings. */
export const STATUS_CORNER = { row: 3, column: 1 };

const WEEKS_CORNER = { row: 3, column: 4 };
const WEEKS = 16;
const FIRST_WEEK = worksheetDate("2026-02-23");
/** Cell formats of the first columns of the ROSTER table. */
const ROSTER_FORMATS = ["General", DATE, DATE, MONEY, MONEY, MONEY];

/** A column of the ROSTER table as an absolute reference. */
function rosterBlock(
  clients: readonly SampleClient[],
  heading: (typeof DEFAULT_HEADINGS)[number]
): string {
  const letter = columnLetters(DEFAULT_HEADINGS.indexOf(heading) + 1);
  const first = ROSTER_CORNER.row + 1;
  return `$${letter}$${first}:$${letter}$${first + clients.length - 1}`;
}

function addStatuses(sheet: Worksheet, clients: readonly SampleClient[]): void {
  const { row, column } = STATUS_CORNER;
  const statuses = rosterBlock(clients, "Status");
  const daysLeft = rosterBlock(clients, "Days left");
  const issues = rosterBlock(clients, "Issues");
  for (const [index, heading] of ["Status", "Clients"].entries())
    sheet.getCell(row, column + index).value = heading;
  const put = (at: number, label: string, formula: string): void => {
    sheet.getCell(at, column).value = label;
    putFormula(sheet, cellAddress(at, column + 1), formula);
  };
  for (const [index, status] of STAGES.entries()) {
    const at = row + 1 + index;
    put(at, status, `COUNTIF(${statuses},${cellAddress(at, column)})`);
  }
  const below = row + STAGES.length + 2;
  put(below, "With issues", `COUNTIF(${issues},">0")`);
  put(below + 1, "Deadline within 30 days", `COUNTIFS(${daysLeft},">=0",${daysLeft},"<=30")`);
  put(below + 2, "Deadline passed", `COUNTIF(${daysLeft},"<0")`);
}

function addWeeks(sheet: Worksheet, clients: readonly SampleClient[]): void {
  const { row, column } = WEEKS_CORNER;
  const requested = clientBlock(clients, "Requested on");
  for (const [index, heading] of ["Week", "From", "Requests"].entries())
    sheet.getCell(row, column + index).value = heading;
  for (let week = 0; week < WEEKS; week += 1) {
    const at = row + 1 + week;
    const from = cellAddress(at, column + 1);
    if (week === 0) sheet.getCell(from).value = FIRST_WEEK;
    else putFormula(sheet, from, `${cellAddress(at - 1, column + 1)}+7`);
    sheet.getCell(from).numFmt = DATE;
    // Text, because a chart over dates would leave room for each date.
    putFormula(sheet, cellAddress(at, column), `TEXT(${from},"mmm d")`);
    putFormula(
      sheet,
      cellAddress(at, column + 2),
      `COUNTIFS(${requested},">="&${from},${requested},"<"&${from}+7)`
    );
  }
  const block = (position: number) => {
    const letter = columnLetters(column + position);
    return `${SUMMARY_SHEET}!$${letter}$${row + 1}:$${letter}$${row + WEEKS}`;
  };
  sheet.addColumnChart(
    {
      title: "Requests by week",
      showLegend: false,
      series: [{ categories: block(0), values: block(2), name: "Requests" }],
    },
    "H3:K19"
  );
}

function addRoster(sheet: Worksheet, clients: readonly SampleClient[]): void {
  const { row, column } = ROSTER_CORNER;
  putLabel(sheet, cellAddress(row - 1, column), "Client list (one ROSTER formula)");
  const lastEntered = columnLetters(clientColumn("Notes"));
  const list = `${CLIENTS_SHEET}!$A$1:$${lastEntered}$${clients.length + 1}`;
  putFormula(sheet, cellAddress(row, column), `EXT.ROSTER(${list},2025,AsOf,AssumedRate)`);
  for (const position of DEFAULT_HEADINGS.keys())
    sheet.getCell(row, column + position).font = { bold: true };
  for (const index of clients.keys())
    for (const [position, format] of ROSTER_FORMATS.entries())
      sheet.getCell(row + 1 + index, column + position).numFmt = format;
}

/** Adds the clients by status, the requests by week with a chart, and the whole client list in one formula. */
export function addSummarySheet(workbook: Workbook, clients: readonly SampleClient[]): void {
  const sheet = workbook.addWorksheet(SUMMARY_SHEET);
  setWidths(sheet, [24, 13, 13, 13, 13, 15, 18, 14, 11, 36, 12, 60]);
  putLabel(sheet, "A1", "As-of date");
  putFormula(sheet, "B1", "AsOf", DATE);
  addStatuses(sheet, clients);
  addWeeks(sheet, clients);
  styleHeadings(sheet, STATUS_CORNER.row, 20);
  addRoster(sheet, clients);
}
