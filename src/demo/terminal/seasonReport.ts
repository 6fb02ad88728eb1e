import {
  type Cell,
  getCellDisplayText,
  type Workbook,
  type Worksheet,
} from "@cj-tech-master/excelts";
import { calendarDate } from "../../calendar/calendarDate";
import { longDate } from "../../calendar/writtenDate";
import { SAMPLE_DATE } from "../season/assumptionsSheet";
import { CHOICE } from "../season/clientChoice";
import { FIRST_ROW } from "../season/clientsSheet";
import { headingPlace } from "../season/columnFormulasSheet";
import { COMPARE_PAYMENTS_CORNER, COMPARE_PAYMENTS_SHEET } from "../season/comparePaymentsSheet";
import { ESTIMATED_TAX_SHEET, FIRST_INSTALLMENTS_CORNER } from "../season/estimatedTaxSheet";
import { GLANCE_SHEET, STATUS_CORNER, TROUBLE_CORNER } from "../season/glanceSheet";
import { PARTIAL_PAYMENTS_CORNER, PARTIAL_PAYMENTS_SHEET } from "../season/partialPaymentsSheet";
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
  ["Payment status", "Payment status"],
  ["Extension counts", "Ext?"],
  ["Filing date used", "Files on"],
  ["Filed on time", "On time"],
  ["Payment date used", "Pays on"],
  ["Failure-to-file penalty alone", "FTF alone"],
  ["Failure-to-pay penalty alone", "FTP alone"],
  ["Penalties and interest (planned)", "Pen + int"],
];
const ABBREVIATIONS = [
  "Ext?: the extension counts. FTF, FTP: failure-to-file and failure-to-pay penalty.",
  "Pen + int: penalties and interest if the client files and pays on these dates.",
];

/** Columns of the list of clients with issues for which a line has no room. */
const TOO_LONG = ["Issue", "To reach 90%", "What to do"];

interface Corner {
  readonly row: number;
  readonly column: number;
}

function sheetOf(workbook: Workbook, name: string): Worksheet {
  const sheet = workbook.getWorksheet(name);
  if (sheet === undefined) throw new Error(`The sample has no sheet ${name}.`);
  return sheet;
}

function isEmpty(cell: Cell): boolean {
  return getCellDisplayText(cell) === "";
}

function isNumeric(cell: Cell): boolean {
  const value = cell.formula ? cell.result : cell.value;
  return typeof value === "number" || value instanceof Date;
}

/** Columns of one or several sheets as a table, from a row down to the last one whose first column shows something. */
function block(
  columns: readonly (readonly [sheet: Worksheet, column: number, heading: string])[],
  firstRow: number,
  width: number
): string[] {
  const cells: Cell[][] = [];
  const [first] = columns;
  if (first === undefined) return [];
  for (let row = firstRow; !isEmpty(first[0].getCell(row, first[1])); row += 1)
    cells.push(columns.map(([sheet, column]) => sheet.getCell(row, column)));
  const shape = columns.map(([, , heading], position): TextColumn => {
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
  omitted: readonly string[] = []
): string[] {
  const columns: [Worksheet, number, string][] = [];
  for (let at = column; !isEmpty(sheet.getCell(row, at)); at += 1) {
    const heading = getCellDisplayText(sheet.getCell(row, at));
    if (!omitted.includes(heading)) columns.push([sheet, at, heading]);
  }
  return block(columns, row + 1, width);
}

/** The results of the sample as lines for the terminal, none of them wider than asked for. */
export function seasonReport(workbook: Workbook, width: number): string[] {
  const totals = sheetOf(workbook, TOTALS_SHEET);
  const glance = sheetOf(workbook, GLANCE_SHEET);
  const compared = sheetOf(workbook, COMPARE_PAYMENTS_SHEET);
  const partial = sheetOf(workbook, PARTIAL_PAYMENTS_SHEET);
  const estimated = sheetOf(workbook, ESTIMATED_TAX_SHEET);
  const text = (sheet: Worksheet, address: string): string =>
    getCellDisplayText(sheet.getCell(address));
  const printed = PRINTED.map(([heading, short]) => {
    const place = headingPlace(heading);
    return [sheetOf(workbook, place.sheet), place.column, short] as const;
  });
  const overall = [
    [totals, OVERALL_CORNER.column, "All clients"],
    [totals, OVERALL_CORNER.column + 1, ""],
  ] as const;
  const chosen = CHOICE.client.replaceAll("$", "");
  return [
    "Sample firm: extension requests",
    "",
    `Clients by status on ${longDate(calendarDate(SAMPLE_DATE))}`,
    "",
    ...table(glance, STATUS_CORNER, width),
    "",
    "Clients with a problem or a risk, worst first",
    "",
    ...table(glance, TROUBLE_CORNER, width, TOO_LONG),
    "",
    ...block(printed, FIRST_ROW, width),
    "",
    ...ABBREVIATIONS,
    "",
    ...block(overall, OVERALL_CORNER.row, width),
    "",
    `Penalties and interest if ${text(compared, chosen)} pays more with the request (down)`,
    "and pays the balance on another date (across)",
    "",
    ...table(compared, COMPARE_PAYMENTS_CORNER, width),
    "",
    `Payment history if ${text(partial, chosen)} makes partial payments`,
    "",
    ...table(partial, PARTIAL_PAYMENTS_CORNER, width, ["Source"]),
    "",
    text(estimated, "A1"),
    "",
    ...table(estimated, FIRST_INSTALLMENTS_CORNER, width),
  ];
}
