import type { Workbook, Worksheet } from "@cj-tech-master/excelts";
import { DATE_FORMAT, WHOLE_DOLLAR_FORMAT } from "../../functions/cells/answerCell";
import { addFacts, CHOICE_ROWS, clientFacts, putLookup, titleWith } from "./clientChoice";
import type { SampleClient } from "./clients";
import { setPage } from "./pageSetup";
import { putFormula, putLabel, putNote, putTitle, setWidths, styleFilledTable } from "./sheetStyle";
import { colorBySeverity, colorByStatus } from "./statusColors";

/** The sheet's name. */
export const REQUEST_SHEET = "Extension request";

/** What is recorded of the request, in the cells H4 to H8. */
const RECORDED = [
  ["Requested on", DATE_FORMAT],
  ["Confirmed on", DATE_FORMAT],
  ["Rejected on", DATE_FORMAT],
  ["Filed on", DATE_FORMAT],
  ["Still needed", "General"],
] as const;

/** The cells of a request sheet that its formulas and the letter use. */
export const REQUEST_CELLS = {
  ...clientFacts("F", 3),
  requestedOn: "$H$4",
  rejectedOn: "$H$6",
  record: "$H$4,$H$5,$H$6,$H$7",
  stillNeeded: "$H$8",
};

/** A table that one formula fills: its label, its corner and size, the height of its rows in points, the formula. */
interface FilledTable {
  readonly label: string;
  readonly row: number;
  readonly rows: number;
  readonly columns: number;
  readonly height?: number;
  readonly formula: string;
}

const { client, taxYear, state, totalTax, payments, paidWithRequest, filerType } = REQUEST_CELLS;
const { filer, postponement, record, requestedOn, rejectedOn, validExtension } = REQUEST_CELLS;
const AMOUNTS = `${totalTax},${payments},${paidWithRequest}`;
const STATUS = "$B$12";
const REQUEST_DATE = `IF(${requestedOn}="",MIN(AsOf,EXT.DUE(${taxYear},${filer},${postponement})),${requestedOn})`;

const STATE_RULE = `EXT.STATERULE(${taxYear},${state},"yes",,,${validExtension})`;
const STATE_ROW = 35;
/** The date column of the tables, from which CHOOSECOLS takes the format of a date. */
const DATE_CELLS = { column: "C", firstRow: 20, lastRow: STATE_ROW + 4 };

const TABLES: readonly FilledTable[] = [
  {
    label: "Form 4868, lines 4 to 9",
    row: 4,
    rows: 7,
    columns: 4,
    formula: `CHOOSECOLS(EXT.LINES(${taxYear},${AMOUNTS},${filerType}),1,2,3,4)`,
  },
  {
    label: "Methods (on the date of the request, or on the as-of date)",
    row: 19,
    rows: 4,
    columns: 6,
    height: 60,
    formula: `CHOOSECOLS(EXT.METHODLINES(${taxYear},${paidWithRequest},${REQUEST_DATE},${rejectedOn},${filer},${postponement}),1,4,3,2,5,6)`,
  },
  {
    label: "Issues with this request, and what to do",
    row: 25,
    rows: 8,
    columns: 7,
    height: 45,
    formula: `EXT.ISSUES(${taxYear},${AMOUNTS},AsOf,${record},${filer},,,,,,${postponement})`,
  },
  {
    label: "State return",
    row: STATE_ROW,
    rows: 5,
    columns: 3,
    height: 31,
    formula: `IF(${STATUS}="filed","the return is filed",IF(OR(${state}="",${state}="foreign"),"no state in the list",IF(ISTEXT(${taxYear}),"not known: the state rules cover calendar years only",TAKE(CHOOSECOLS(${STATE_RULE},1,3,2),5))))`,
  },
];

function addResults(sheet: Worksheet): void {
  const results: readonly (readonly [label: string, row: number, formula: string])[] = [
    ["Status", 12, `EXT.STAGE(${taxYear},AsOf,${record},${filer},${postponement})`],
    ["Next deadline", 13, `EXT.NEXTDATE(${taxYear},AsOf,${record},,${filer},${postponement})`],
    [
      "Mailing address (paper)",
      16,
      `IF(${STATUS}="filed","the return is filed",IF(${state}="","enter the state",EXT.MAILTO(${taxYear},${state},${paidWithRequest},,${filerType})))`,
    ],
  ];
  for (const [label, row, formula] of results) {
    putLabel(sheet, `A${row}`, label);
    sheet.getCell(`A${row}`).alignment = { wrapText: true, vertical: "top" };
    putFormula(sheet, `B${row}`, formula);
    sheet.getCell(`B${row}`).alignment = { wrapText: true, vertical: "top" };
  }
  sheet.getRow(16).height = 30;
  colorByStatus(sheet, "B12", STATUS);
}

/**
 * Adds the sheet of one client's request, which prints on one page: lines, record, status, methods, issues with what to do, and the
 * state return.
 *
 * @param workbook - The workbook.
 * @param clients - The clients of the sample firm.
 * @param chosen - The client, and the name of the sheet.
 */
export function addRequestSheet(
  workbook: Workbook,
  clients: readonly SampleClient[],
  chosen: { readonly client: string; readonly name: string }
): void {
  const sheet = workbook.addWorksheet(chosen.name, {
    views: [{ state: "normal", showGridLines: false }],
  });
  setWidths(sheet, [18, 56, 12, 13, 30, 46, 26, 14]);
  putTitle(sheet, titleWith("Extension request", client));
  putNote(sheet, "A2", "An extension of time to file is not an extension of time to pay.");
  addFacts(sheet, clients, ["E", "F"], 3, chosen.client);
  putLabel(sheet, "G3", "Record");
  for (const [index, fact] of RECORDED.entries())
    putLookup(sheet, clients, ["G", "H"], index + 4, fact, client);
  addResults(sheet);
  // Some programs apply the first of two rules for a cell, so the color comes before the lines between the rows.
  colorBySeverity(sheet, "A26:A32", "$A26");
  for (const { label, row, rows, columns, height, formula } of TABLES) {
    putLabel(sheet, `A${row - 1}`, label);
    styleFilledTable(sheet, { row, column: 1 }, { rows, columns }, height);
    putFormula(sheet, `A${row}`, formula);
  }
  styleFilledTable(sheet, { row: STATE_ROW, column: 6 }, { rows: 5, columns: 1 }, 31);
  putFormula(sheet, `F${STATE_ROW}`, `IFERROR(TAKE(CHOOSECOLS(${STATE_RULE},4),5),"")`);
  for (let row = 5; row <= 10; row += 1) sheet.getCell(`C${row}`).numFmt = WHOLE_DOLLAR_FORMAT;
  for (let row = DATE_CELLS.firstRow; row <= DATE_CELLS.lastRow; row += 1)
    sheet.getCell(`${DATE_CELLS.column}${row}`).numFmt = DATE_FORMAT;
  for (let row = 3; row < 3 + CHOICE_ROWS; row += 1)
    for (const column of ["F", "H"])
      sheet.getCell(`${column}${row}`).alignment = { horizontal: "left" };
  for (let row = 20; row <= 22; row += 1)
    sheet.getCell(`D${row}`).alignment = {
      horizontal: "center",
      vertical: "top",
      wrapText: true,
    };
  // A sheet of one client alone has the client's name.
  setPage(sheet, { pagesTall: 1, hasClientTitle: chosen.name !== chosen.client });
}
