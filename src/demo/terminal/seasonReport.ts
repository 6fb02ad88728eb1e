import {
  type Cell,
  getCellDisplayText,
  type Workbook,
  type Worksheet,
} from "@cj-tech-master/excelts";
import { calendarDate } from "../../calendar/calendarDate";
import { longDate } from "../../calendar/writtenDate";
import { SAMPLE_DATE } from "../season/assumptionsSheet";
import { CLIENTS_SHEET, clientColumn } from "../season/clientsSheet";
import { COMPARE_PAYMENTS_CORNER, COMPARE_PAYMENTS_SHEET } from "../season/comparePaymentsSheet";
import { ESTIMATED_TAX_SHEET, FIRST_INSTALLMENTS_CORNER } from "../season/estimatedTaxSheet";
import { PARTIAL_PAYMENTS_CORNER, PARTIAL_PAYMENTS_SHEET } from "../season/partialPaymentsSheet";
import { STATUS_CORNER, SUMMARY_SHEET } from "../season/summarySheet";
import { OVERALL_CORNER, TOTALS_SHEET } from "../season/totalsSheet";
import { type TextColumn, textTable } from "./textTable";

/** The columns of the client list that are printed, and their headings. */
const PRINTED: readonly (readonly [heading: string, printed: string])[] = [
  ["Client", "Client"],
  ["Tax year or fiscal year end", "Tax year"],
  ["State", "State"],
  ["Filer type", "Filer type"],
  ["Status", "Status"],
  ["Regular due date", "Regular due date"],
  ["Extended due date", "Extended due date"],
  ["Payment due date", "Payment due date"],
  ["Estimated total tax", "Total tax (est.)"],
  ["Total payments", "Total payments"],
  ["Paid with request", "Paid w/request"],
  ["Balance due", "Balance due"],
  ["Suggested payment", "Suggested payment"],
  ["Remaining to pay", "Remaining to pay"],
  ["90% test met", "90% test"],
  ["What to do", "What to do"],
  ["Valid extension", "Ext?"],
  ["Planned filing date", "Planned filing date"],
  ["Filed on time", "On time"],
  ["Planned payment date", "Planned payment date"],
  ["Failure-to-file penalty alone", "FTF alone"],
  ["Failure-to-pay penalty alone", "FTP alone"],
  ["Penalties and interest (planned)", "Pen + int"],
];
const ABBREVIATIONS = [
  "Ext?: valid extension. FTF, FTP: failure-to-file and failure-to-pay penalty.",
  "Pen + int: penalties and interest if the client files and pays on the planned dates.",
];

interface Corner {
  readonly row: number;
  readonly column: number;
}

function sheetOf(workbook: Workbook, name: string): Worksheet {
  const sheet = workbook.getWorksheet(name);
  if (sheet === undefined) throw new Error(`The sample has no sheet ${name}.`);
  return sheet;
}

function isNumeric(cell: Cell): boolean {
  const value = cell.formula ? cell.result : cell.value;
  return typeof value === "number" || value instanceof Date;
}

/** Some columns of a sheet as a table, from a row down to the last one whose first column is filled. */
function block(
  sheet: Worksheet,
  columns: readonly (readonly [column: number, heading: string])[],
  firstRow: number,
  width: number
): string[] {
  const [[first] = [1]] = columns;
  const cells: Cell[][] = [];
  for (let row = firstRow; sheet.getCell(row, first).value !== null; row += 1)
    cells.push(columns.map(([column]) => sheet.getCell(row, column)));
  const shape = columns.map(([, heading], position): TextColumn => {
    const numeric = cells.some((row) => row[position] !== undefined && isNumeric(row[position]));
    return { heading, align: numeric ? "right" : "left" };
  });
  return textTable(
    shape,
    cells.map((row) => row.map((cell) => getCellDisplayText(cell))),
    width
  );
}

/** A table of a sheet from its corner, as far as its headings and its first column are filled. */
function table(
  sheet: Worksheet,
  { row, column }: Corner,
  width: number,
  omitted?: string
): string[] {
  const columns: [number, string][] = [];
  for (let at = column; sheet.getCell(row, at).value !== null; at += 1) {
    const heading = getCellDisplayText(sheet.getCell(row, at));
    if (heading !== omitted) columns.push([at, heading]);
  }
  return block(sheet, columns, row + 1, width);
}

/** The results of the sample as lines for the terminal, none of them wider than asked for. */
export function seasonReport(workbook: Workbook, width: number): string[] {
  const clients = sheetOf(workbook, CLIENTS_SHEET);
  const totals = sheetOf(workbook, TOTALS_SHEET);
  const summary = sheetOf(workbook, SUMMARY_SHEET);
  const compared = sheetOf(workbook, COMPARE_PAYMENTS_SHEET);
  const partial = sheetOf(workbook, PARTIAL_PAYMENTS_SHEET);
  const estimated = sheetOf(workbook, ESTIMATED_TAX_SHEET);
  const text = (sheet: Worksheet, address: string): string =>
    getCellDisplayText(sheet.getCell(address));
  const printed = PRINTED.map(([heading, short]) => [clientColumn(heading), short] as const);
  const overall = [
    [OVERALL_CORNER.column, "All clients"],
    [OVERALL_CORNER.column + 1, ""],
  ] as const;
  return [
    "Sample firm: extension requests",
    "",
    ...block(clients, printed, 2, width),
    "",
    ...ABBREVIATIONS,
    "",
    ...block(totals, overall, OVERALL_CORNER.row, width),
    "",
    `Clients by status on ${longDate(calendarDate(SAMPLE_DATE))}`,
    "",
    ...table(summary, STATUS_CORNER, width),
    "",
    `Penalties and interest if ${text(compared, "B1")} pays more with the request (down)`,
    "and pays the balance on another date (across)",
    "",
    ...table(compared, COMPARE_PAYMENTS_CORNER, width),
    "",
    `Payment history if ${text(partial, "B1")} makes partial payments`,
    "",
    ...table(partial, PARTIAL_PAYMENTS_CORNER, width, "Source"),
    "",
    text(estimated, "A1"),
    "",
    ...table(estimated, FIRST_INSTALLMENTS_CORNER, width),
  ];
}
