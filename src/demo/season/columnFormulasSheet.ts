import type { Workbook, Worksheet } from "@cj-tech-master/excelts";
import { fillFormula, WHOLE_NUMBER, type CalculatedColumn } from "../../addin/list/clientList";
import { DATE_FORMAT, MONEY_FORMAT, PERCENT_FORMAT } from "../../functions/cells/answerCell";
import { cellAddress, columnLetters } from "../../host/cellAddress";
import type { SampleClient } from "./clients";
import { CLIENTS_SHEET, clientColumn, FIRST_ROW } from "./clientsSheet";
import { setPage } from "./pageSetup";
import { FILLED_COLUMNS, ORDINARY_COLUMNS } from "./sampleColumns";
import { putFormula, styleHeadings } from "./sheetStyle";

/** The sheet's name. */
export const COLUMN_FORMULAS_SHEET = "Column formulas";

const COLUMNS = [...FILLED_COLUMNS, ...ORDINARY_COLUMNS];
/** Widths in characters, by the number format: as narrow as the answers allow, so that two printed pages hold all columns. */
const WIDTHS: Readonly<Record<string, number>> = {
  [DATE_FORMAT]: 11,
  [MONEY_FORMAT]: 12,
  [WHOLE_NUMBER]: 7,
  [PERCENT_FORMAT]: 9,
};
/** Widths of columns of text whose longest answer is not a status. */
const TEXT_WIDTHS: Readonly<Record<string, number>> = { "Payment status": 22 };
const STATUS_WIDTH = 13;
const YES_NO = /^(Extension|90%|Filed)/;
const YES_NO_WIDTH = 10;
/** In points: four lines of a heading. */
const HEADING_HEIGHT = 62;

function widthOf({ heading, format }: CalculatedColumn): number {
  if (YES_NO.test(heading)) return YES_NO_WIDTH;
  return WIDTHS[format] ?? TEXT_WIDTHS[heading] ?? STATUS_WIDTH;
}

/** The defined names of what applies to every client. The sheet's suggested payment has no cushion; a column of its own has one. */
const SETTINGS = {
  "as-of date": "AsOf",
  "assumed rate": "AssumedRate",
  target: '"full"',
  cushion: "0",
};
const WITH_CUSHION = "Suggested payment with cushion";
/** The heading of a suggested payment with the cushion says how large the cushion is. */
export const CUSHION_HEADING =
  '"Suggested payment with "&IF(Cushion<1,ROUND(Cushion*100,2)&"%",TEXT(Cushion,"$#,##0"))&" cushion"';

/** Where a heading of the client list or of the column formulas is: the sheet, and the column counted from 1. */
export function headingPlace(heading: string): { readonly sheet: string; readonly column: number } {
  const listed = clientColumn(heading);
  if (listed > 0) return { sheet: CLIENTS_SHEET, column: listed };
  const index = COLUMNS.findIndex((column) => column.heading === heading);
  if (index < 0) throw new Error(`The sample has no column ${heading}.`);
  return { sheet: COLUMN_FORMULAS_SHEET, column: index + 2 };
}

/** The cells of a heading as an absolute reference from another sheet, such as Clients!$A$2:$A$48. */
export function clientBlock(clients: readonly SampleClient[], heading: string): string {
  const { sheet, column } = headingPlace(heading);
  const letters = columnLetters(column);
  const lastRow = FIRST_ROW + clients.length - 1;
  const name = sheet.includes(" ") ? `'${sheet}'` : sheet;
  return `${name}!$${letters}$${FIRST_ROW}:$${letters}$${lastRow}`;
}

/** Where a formula of the sheet finds a heading: the sheet's own column comes first. */
function ownOrListed(heading: string): { readonly prefix: string; readonly letters: string } {
  const own = COLUMNS.findIndex((column) => column.heading === heading);
  if (own >= 0) return { prefix: "", letters: columnLetters(own + 2) };
  return { prefix: `${CLIENTS_SHEET}!`, letters: columnLetters(clientColumn(heading)) };
}

/** Puts an ordinary formula that fills a column into its first cell, as a spreadsheet saves one. */
function putSpill(sheet: Worksheet, column: number, formula: string, lastRow: number): void {
  const letters = columnLetters(column);
  sheet.getCell(FIRST_ROW, column).value = {
    formula,
    ref: `${letters}${FIRST_ROW}:${letters}${lastRow}`,
    shareType: "array",
    isDynamicArray: true,
  };
}

/** Adds what the client list shows, calculated with one function a column, and a few columns of ordinary formulas. */
export function addColumnFormulasSheet(workbook: Workbook, clients: readonly SampleClient[]): void {
  const sheet = workbook.addWorksheet(COLUMN_FORMULAS_SHEET, {
    views: [{ state: "frozen", xSplit: 1, ySplit: 1 }],
  });
  const lastRow = FIRST_ROW + clients.length - 1;
  const cells = (heading: string): string => {
    const { prefix, letters } = ownOrListed(heading);
    return `${prefix}${letters}${FIRST_ROW}:${letters}${lastRow}`;
  };
  sheet.getCell("A1").value = "Client";
  sheet.getColumn(1).width = 14;
  putSpill(sheet, 1, cells("Client"), lastRow);
  for (const [index, calculated] of COLUMNS.entries()) {
    const { heading, format, formula } = calculated;
    const column = index + 2;
    sheet.getColumn(column).width = widthOf(calculated);
    const isChanging = heading === WITH_CUSHION;
    sheet.getCell(1, column).value = isChanging ? { formula: CUSHION_HEADING } : heading;
    for (let row = FIRST_ROW; row <= lastRow; row += 1) {
      sheet.getCell(row, column).numFmt = format;
      // A text begins apart from the number to its left.
      if (format === "General")
        sheet.getCell(row, column).alignment = { horizontal: "left", indent: 1 };
    }
    const filled = fillFormula(formula, SETTINGS, cells);
    if (index < FILLED_COLUMNS.length) putFormula(sheet, cellAddress(FIRST_ROW, column), filled);
    else putSpill(sheet, column, filled, lastRow);
  }
  styleHeadings(sheet, 1, HEADING_HEIGHT);
  setPage(sheet, { headingRows: "1:1", headingColumns: "A:A", pagesWide: 2 });
}
