import type { Workbook, Worksheet } from "@cj-tech-master/excelts";
import { DATE_FORMAT } from "../../functions/cells/answerCell";
import { STAGES } from "../../calculation/season/requestStage";
import { SEVERITIES } from "../../rules/requestWords";
import { SAMPLE_DATE } from "./assumptionsSheet";
import { putClientInput } from "./clientChoice";
import type { SampleClient } from "./clients";
import { clientBlock } from "./columnFormulasSheet";
import { addGlanceCharts } from "./glanceCharts";
import { setPage } from "./pageSetup";
import { CAUTIONS, EXCEL_HINTS } from "./readMeSheet";
import {
  putFormula,
  putInput,
  putLabel,
  putNote,
  putTitle,
  setWidths,
  styleHeading,
  styleTotal,
  worksheetDate,
} from "./sheetStyle";
import { colorBySeverity, colorByStatus } from "./statusColors";
import { addTroubleList } from "./troubleList";

/** The sheet's name. */
export const GLANCE_SHEET = "Season at a glance";
/** The corner of the number of clients by status, including its headings. */
export const STATUS_CORNER = { row: 6, column: 1 };

const SEVERITY_ROW = STATUS_CORNER.row + STAGES.length + 2;
const DEADLINE_ROW = SEVERITY_ROW + SEVERITIES.length + 2;
/** The cell in which the client of the chart on the cost of waiting is chosen. */
export const CHOSEN_CLIENT = `$B$${String(DEADLINE_ROW + 2)}`;
const TROUBLE_ROW = DEADLINE_ROW + 4;
/** The corner of the list of clients with issues, including its headings. */
export const TROUBLE_CORNER = { row: TROUBLE_ROW + 1, column: 1 };

function putHeadings(sheet: Worksheet, row: number, headings: readonly string[]): void {
  for (const [index, heading] of headings.entries()) {
    const cell = sheet.getCell(row, index + 1);
    cell.value = heading;
    styleHeading(cell);
  }
}

function putCount(sheet: Worksheet, row: number, label: string, formula: string): void {
  sheet.getCell(`A${row}`).value = label;
  putFormula(sheet, `B${row}`, formula);
}

function addCounts(sheet: Worksheet, clients: readonly SampleClient[]): void {
  const block = (heading: string): string => clientBlock(clients, heading);
  const { row: top } = STATUS_CORNER;
  putHeadings(sheet, top, ["Status", "Clients"]);
  for (const [index, status] of STAGES.entries()) {
    const row = top + 1 + index;
    putCount(sheet, row, status, `COUNTIF(${block("Status")},A${row})`);
  }
  const total = top + STAGES.length + 1;
  putCount(sheet, total, "All clients", `SUM(B${top + 1}:B${total - 1})`);
  styleTotal(sheet, total, 2);
  colorByStatus(sheet, `A${top + 1}:B${total - 1}`, `$A${top + 1}`, `$B${top + 1}`);

  putHeadings(sheet, SEVERITY_ROW, ["Most serious issue", "Clients"]);
  for (const [index, severity] of SEVERITIES.entries()) {
    const row = SEVERITY_ROW + 1 + index;
    putCount(sheet, row, severity, `COUNTIF(${block("Severity")},A${row})`);
  }
  const first = SEVERITY_ROW + 1;
  const none = first + SEVERITIES.length;
  putCount(sheet, none, "none", `B${total}-SUM(B${first}:B${none - 1})`);
  colorBySeverity(sheet, `A${first}:B${none - 1}`, `$A${first}`, `$B${first}`);

  const days = block("Days left");
  putCount(sheet, DEADLINE_ROW, "Due in 30 days", `COUNTIFS(${days},">=0",${days},"<=30")`);
  putCount(sheet, DEADLINE_ROW + 1, "Deadline passed", `COUNTIF(${days},"<0")`);
}

/** Adds the first sheet: the as-of date, the clients by status and by severity, three charts, and the list of clients with issues. */
export function addGlanceSheet(workbook: Workbook, clients: readonly SampleClient[]): void {
  const sheet = workbook.addWorksheet(GLANCE_SHEET, {
    views: [{ state: "normal", showGridLines: false }],
  });
  setWidths(sheet, [20, 14, 14, 46, 27, 12, 56]);
  putTitle(sheet, GLANCE_SHEET);
  putLabel(sheet, "A2", "As-of date");
  putInput(sheet, "B2", worksheetDate(SAMPLE_DATE), DATE_FORMAT);
  workbook.definedNames.add(`'${GLANCE_SHEET}'!$B$2`, "AsOf");
  putLabel(sheet, "D2", CAUTIONS.slice(0, 2).join(" "));
  putNote(sheet, "D1", CAUTIONS[2]);
  for (const [index, hint] of EXCEL_HINTS.entries()) putNote(sheet, `A${3 + index}`, hint);
  addCounts(sheet, clients);
  const chosen = CHOSEN_CLIENT.replaceAll("$", "");
  putLabel(sheet, chosen.replace("B", "A"), "Cost of waiting for");
  putClientInput(sheet, clients, chosen, "Bracken");
  addGlanceCharts(sheet, {
    firstRow: STATUS_CORNER.row,
    rows: TROUBLE_ROW - STATUS_CORNER.row - 1,
  });
  const lastRow = addTroubleList(sheet, clients, TROUBLE_ROW);
  const headings = TROUBLE_ROW + 1;
  setPage(sheet, {
    headingRows: `${headings}:${headings}`,
    pagesTall: 2,
    area: `A1:G${lastRow}`,
  });
}
