import type { Workbook } from "@cj-tech-master/excelts";
import { MONEY } from "../../addin/clientList";
import { setPage } from "./pageSetup";
import {
  putFormula,
  putInput,
  putLabel,
  putTitle,
  setWidths,
  styleFilledTable,
  styleHeadings,
  styleTotal,
} from "./sheetStyle";
import { TOTAL_TAX_CASES, type TotalTaxCase } from "./totalTaxCases";

const FIRST_ITEM_ROW = 8;
const ITEM_ROWS = 12;
const TOTAL_TAX = "B3";
const PAYMENTS = "B4";

/** Cells of a client's estimate, as references from other sheets spell them. */
export interface TotalTaxCells {
  readonly totalTax: string;
  readonly payments: string;
}

function sheetName({ client }: TotalTaxCase): string {
  return `Total tax ${client}`;
}

/** The cells of a client's estimate; undefined for a client who has no sheet of this kind. */
export function totalTaxCells(client: string): TotalTaxCells | undefined {
  const found = TOTAL_TAX_CASES.find((one) => one.client === client);
  if (found === undefined) return undefined;
  const sheet = `'${sheetName(found)}'!`;
  return { totalTax: `${sheet}${TOTAL_TAX}`, payments: `${sheet}${PAYMENTS}` };
}

function addTotalTaxSheet(workbook: Workbook, one: TotalTaxCase): void {
  const sheet = workbook.addWorksheet(sheetName(one));
  setWidths(sheet, [34, 24, 4, 50, 14, 100]);
  putTitle(
    sheet,
    `="Total tax 2025: ${one.client}, ${one.description}, as of "&TEXT(AsOf,"m/d/yyyy")`
  );
  sheet.getCell("A2").value = "Filing status";
  putInput(sheet, "B2", one.filingStatus);
  const items = `A${FIRST_ITEM_ROW}:B${FIRST_ITEM_ROW + ITEM_ROWS - 1}`;
  sheet.getCell("A3").value = "Estimated total tax (line 4)";
  putFormula(sheet, TOTAL_TAX, `EXT.LIABILITY(2025,B2,${items})`, MONEY);
  sheet.getCell("A4").value = "Total payments (line 5)";
  putFormula(sheet, PAYMENTS, `EXT.PAYMENTSTOTAL(${items})`, MONEY);
  sheet.getCell("A5").value = "Balance due (line 6)";
  putFormula(sheet, "B5", `EXT.SHORTFALL(${TOTAL_TAX},${PAYMENTS})`, MONEY);

  sheet.getCell("A7").value = "Items entered";
  sheet.getCell("B7").value = "Amount";
  styleHeadings(sheet, 7, 20);
  for (let index = 0; index < ITEM_ROWS; index += 1) {
    const row = FIRST_ITEM_ROW + index;
    const [label = null, amount = null] = one.items[index] ?? [];
    putInput(sheet, `A${row}`, label);
    putInput(sheet, `B${row}`, amount, "#,##0");
  }
  putLabel(sheet, "D2", "Calculation of total tax");
  putFormula(sheet, "D3", `EXT.LIABILITYLINES(2025,B2,${items})`);
  styleFilledTable(sheet, { row: 3, column: 4 }, { rows: 30, columns: 3 });
  styleTotal(sheet, 5, 2);
  setPage(sheet);
}

/** The items of a client's estimate with their amounts, and the cell with the filing status. */
export function totalTaxItems(client: string): {
  readonly items: string;
  readonly filingStatus: string;
} {
  const sheet = `'Total tax ${client}'!`;
  const lastRow = FIRST_ITEM_ROW + ITEM_ROWS - 1;
  return {
    items: `${sheet}$A$${FIRST_ITEM_ROW}:$B$${lastRow}`,
    filingStatus: `${sheet}$B$2`,
  };
}

/** Adds an estimate of total tax for each of five typical clients, to which the client list refers. */
export function addTotalTaxSheets(workbook: Workbook): void {
  for (const one of TOTAL_TAX_CASES) addTotalTaxSheet(workbook, one);
}
