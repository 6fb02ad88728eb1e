import type { Workbook, Worksheet } from "@cj-tech-master/excelts";
import { STAGES } from "../../calculation/season/requestStage";
import { ROSTER_ANSWERS } from "../../functions/rosterRow";
import { cellAddress, columnLetters } from "../../host/cellAddress";
import { CLIENTS_SHEET, clientBlock, clientColumn } from "./clientsSheet";
import { SEASON_CLIENTS } from "./clients";
import {
  DAY,
  MONEY,
  putFormula,
  putLabel,
  setWidths,
  styleHeadings,
  worksheetDate,
} from "./sheetStyle";

/** The sheet's name. */
export const BOARD_SHEET = "Season";
/** Where the whole list in one formula begins, its headings included. */
export const ROSTER_CORNER = { row: 22, column: 1 };
/** Where the counts by stage begin, their headings included. */
export const STAGES_CORNER = { row: 3, column: 1 };

const WEEKS_CORNER = { row: 3, column: 4 };
const WEEKS = 16;
const FIRST_WEEK = worksheetDate("2026-02-23");

/** A column of the list below, as an absolute block. */
function rosterBlock(heading: (typeof ROSTER_ANSWERS)[number]): string {
  const letter = columnLetters(ROSTER_ANSWERS.indexOf(heading) + 1);
  const first = ROSTER_CORNER.row + 1;
  return `$${letter}$${first}:$${letter}$${first + SEASON_CLIENTS.length - 1}`;
}

function addStages(sheet: Worksheet): void {
  const { row, column } = STAGES_CORNER;
  for (const [index, heading] of ["Stage", "Clients"].entries())
    sheet.getCell(row, column + index).value = heading;
  for (const [index, stage] of STAGES.entries()) {
    sheet.getCell(row + 1 + index, column).value = stage;
    const here = cellAddress(row + 1 + index, column);
    putFormula(
      sheet,
      cellAddress(row + 1 + index, column + 1),
      `COUNTIF(${rosterBlock("Stage")},${here})`
    );
  }
  const below = row + STAGES.length + 2;
  const lines = [
    ["Wrong or risky", `COUNTIF(${rosterBlock("Wrong or risky")},">0")`],
    [
      "Due within 30 days",
      `COUNTIFS(${rosterBlock("Days left")},">=0",${rosterBlock("Days left")},"<=30")`,
    ],
    ["Date passed", `COUNTIF(${rosterBlock("Days left")},"<0")`],
  ] as const;
  for (const [index, [label, formula]] of lines.entries()) {
    sheet.getCell(below + index, column).value = label;
    putFormula(sheet, cellAddress(below + index, column + 1), formula);
  }
}

function addWeeks(sheet: Worksheet): void {
  const { row, column } = WEEKS_CORNER;
  const asked = clientBlock(clientColumn("Asked on"));
  for (const [index, heading] of ["Week", "From", "Requests"].entries())
    sheet.getCell(row, column + index).value = heading;
  for (let week = 0; week < WEEKS; week += 1) {
    const at = row + 1 + week;
    const from = cellAddress(at, column + 1);
    if (week === 0) sheet.getCell(from).value = FIRST_WEEK;
    else putFormula(sheet, from, `${cellAddress(at - 1, column + 1)}+7`);
    sheet.getCell(from).numFmt = DAY;
    // As text: a chart over dates would leave room for each day.
    putFormula(sheet, cellAddress(at, column), `TEXT(${from},"mmm d")`);
    putFormula(
      sheet,
      cellAddress(at, column + 2),
      `COUNTIFS(${asked},">="&${from},${asked},"<"&${from}+7)`
    );
  }
  const block = (position: number) => {
    const letter = columnLetters(column + position);
    return `${BOARD_SHEET}!$${letter}$${row + 1}:$${letter}$${row + WEEKS}`;
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

/** Adds the season at a glance: counts by stage, requests by week with a chart, and the whole client list in one formula. */
export function addBoardSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet(BOARD_SHEET);
  setWidths(sheet, [18, 12, 12, 13, 13, 15, 18, 12, 11, 30, 12]);
  putLabel(sheet, "A1", "Season on");
  putFormula(sheet, "B1", "AsOf", DAY);
  styleCorner(sheet);
  addStages(sheet);
  addWeeks(sheet);
  styleHeadings(sheet, STAGES_CORNER.row, 20);
  const { row, column } = ROSTER_CORNER;
  putLabel(sheet, cellAddress(row - 1, column), "The whole list, in one formula");
  const lastTyped = clientColumn("About");
  const grid = `${CLIENTS_SHEET}!$A$1:$${lastTyped}$${SEASON_CLIENTS.length + 1}`;
  putFormula(sheet, cellAddress(row, column), `EXT.ROSTER(${grid},2025,AsOf,AssumedRate)`);
}

/** Formats for what the list's formula will fill. */
function styleCorner(sheet: Worksheet): void {
  const formats = ["General", DAY, DAY, MONEY, MONEY, MONEY];
  for (let index = 0; index <= SEASON_CLIENTS.length; index += 1) {
    const row = ROSTER_CORNER.row + index;
    for (const [position, format] of formats.entries())
      if (index > 0) sheet.getCell(row, ROSTER_CORNER.column + position).numFmt = format;
    if (index === 0)
      for (const position of ROSTER_ANSWERS.keys())
        sheet.getCell(row, ROSTER_CORNER.column + position).font = { bold: true };
  }
}
