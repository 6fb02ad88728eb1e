import type { Workbook, Worksheet } from "@cj-tech-master/excelts";
import { DATE_FORMAT, WHOLE_DOLLAR_FORMAT } from "../../functions/cells/answerCell";
import { estimateSheet } from "../../addin/list/estimateSheet";
import { setPage } from "./pageSetup";
import {
  putNote,
  putTitle,
  setBold,
  setWidths,
  styleFilledTable,
  styleHeadings,
  styleInput,
  styleTotal,
} from "./sheetStyle";
import { TOTAL_TAX_CASES, type TotalTaxCase } from "./totalTaxCases";

type Row = readonly (string | number)[];

const TAX_YEAR = 2025;
const ITEM_COLUMN = 2;
const AMOUNT_COLUMN = 3;
const { cells: BLANK, headingRow, widths, formats } = estimateSheet(TAX_YEAR);

/** The row of a label of the layout, counted from 1. */
function rowOf(column: number, label: string): number {
  const index = BLANK.findIndex((row) => row[column - 1] === label);
  if (index < 0) throw new RangeError(`The layout of the estimate has no row ${label}.`);
  return index + 1;
}

const TOTAL_TAX = rowOf(ITEM_COLUMN, "Estimated total tax (line 4)");
const PAYMENTS = TOTAL_TAX + 1;
const BALANCE_DUE = TOTAL_TAX + 2;
const CALCULATION = rowOf(1, "Calculation");
/** Rows of the calculation that are formatted. */
const CALCULATION_ROWS = 40;
const FIRST_ITEM = headingRow + 1;
const LAST_ITEM = TOTAL_TAX - 2;
const FILING_STATUS = 3;

/** Cells of a client's estimate, as references from other sheets spell them. */
export interface TotalTaxCells {
  readonly totalTax: string;
  readonly payments: string;
  readonly filingStatus: string;
  /** The rows of label and amount. */
  readonly items: string;
  /** The cell with the label, and the cell with the amount, of each item that is entered. */
  readonly entered: readonly (readonly [label: string, amount: string])[];
}

function sheetName({ client }: TotalTaxCase): string {
  return `Total tax ${client}`;
}

/** The cells of a client's estimate; undefined for a client who has no sheet of this kind. */
export function totalTaxCells(client: string): TotalTaxCells | undefined {
  const found = TOTAL_TAX_CASES.find((one) => one.client === client);
  if (found === undefined) return undefined;
  const at = (row: number): string => `'${sheetName(found)}'!$C$${row}`;
  return {
    totalTax: at(TOTAL_TAX),
    payments: at(PAYMENTS),
    filingStatus: at(FILING_STATUS),
    items: `'${sheetName(found)}'!$B$${FIRST_ITEM}:$C$${LAST_ITEM}`,
    entered: rowsOf(found.items).map((row) => [at(row).replace("$C", "$B"), at(row)]),
  };
}

/**
 * The row of the layout for each item, counted from 1: the next free row of its label, or a row for others.
 *
 * @param items - Label and amount of each item.
 */
function rowsOf(items: TotalTaxCase["items"]): number[] {
  const taken = new Set<number>();
  return items.map(([label]) => {
    const free = (wanted: string): number =>
      BLANK.findIndex(
        (row, index) =>
          index + 1 >= FIRST_ITEM &&
          index + 1 <= LAST_ITEM &&
          row[ITEM_COLUMN - 1] === wanted &&
          !taken.has(index)
      );
    const index = [free(label), free("")].find((at) => at >= 0);
    if (index === undefined)
      throw new RangeError(`The layout of the estimate has no row ${label}.`);
    taken.add(index);
    return index + 1;
  });
}

/** The rows of the layout with a client's amounts. */
function filledRows({ filingStatus, items }: TotalTaxCase): Row[] {
  const rows = estimateSheet(TAX_YEAR, filingStatus).cells.map((row) => [...row]);
  for (const [index, row] of rowsOf(items).entries())
    rows[row - 1]?.splice(ITEM_COLUMN - 1, 2, ...(items[index] ?? []));
  return rows;
}

function putRow(sheet: Worksheet, number: number, row: Row): void {
  for (const [index, value] of row.entries()) {
    const cell = sheet.getCell(number, index + 1);
    const isFormula = typeof value === "string" && value.startsWith("=");
    cell.value = isFormula ? { formula: value.slice(1) } : value === "" ? null : value;
    const format = formats[index] ?? "";
    if (format !== "" && number > headingRow) cell.numFmt = format;
    if (index === 0) setBold(cell);
    const isInput = index === AMOUNT_COLUMN - 1 && number <= LAST_ITEM && number !== headingRow;
    if (!isInput || row[ITEM_COLUMN - 1] === undefined) continue;
    styleInput(cell);
    cell.alignment = { horizontal: "right" };
  }
}

function addTotalTaxSheet(workbook: Workbook, one: TotalTaxCase): void {
  const sheet = workbook.addWorksheet(sheetName(one), {
    views: [{ state: "frozen", ySplit: headingRow }],
  });
  setWidths(sheet, widths);
  for (const [index, row] of filledRows(one).entries()) putRow(sheet, index + 1, row);
  const [[caution = ""] = []] = BLANK;
  putTitle(
    sheet,
    `="Total tax ${TAX_YEAR}: ${one.client}, ${one.description}, as of "&TEXT(AsOf,"${DATE_FORMAT}")`
  );
  putNote(sheet, "A4", String(caution));
  styleHeadings(sheet, headingRow, 20);
  for (let row = FILING_STATUS; row <= CALCULATION + CALCULATION_ROWS; row += 1) {
    if (row !== headingRow && row !== CALCULATION)
      sheet.getCell(row, AMOUNT_COLUMN + 1).alignment = { horizontal: "left", indent: 1 };
    if (row > CALCULATION) sheet.getCell(row, AMOUNT_COLUMN).numFmt = WHOLE_DOLLAR_FORMAT;
  }
  styleFilledTable(
    sheet,
    { row: CALCULATION, column: ITEM_COLUMN },
    { rows: CALCULATION_ROWS, columns: 3 }
  );
  styleTotal(sheet, BALANCE_DUE, AMOUNT_COLUMN);
  setPage(sheet, {
    headingRows: `${headingRow}:${headingRow}`,
    pagesTall: 2,
    area: `A1:D${CALCULATION + CALCULATION_ROWS}`,
  });
}

/** Adds an estimate of total tax for each of five typical clients, to which the client list refers. */
export function addTotalTaxSheets(workbook: Workbook): void {
  for (const one of TOTAL_TAX_CASES) addTotalTaxSheet(workbook, one);
}
