import type { Workbook } from "@cj-tech-master/excelts";
import { ESTIMATE_CASES, type EstimateCase } from "./estimateCases";
import { MONEY, putFormula, putLabel, setWidths, styleHeadings, styleInput } from "./sheetStyle";

const FIRST_ITEM_ROW = 8;
const ITEM_ROWS = 12;
const TOTAL_TAX = "B3";
const PAYMENTS = "B4";

/** Where a client's estimate stands, as references from other sheets spell it. */
export interface EstimateCells {
  readonly totalTax: string;
  readonly payments: string;
}

function sheetName({ client }: EstimateCase): string {
  return `Estimate ${client}`;
}

/** The cells of a client's estimate; undefined for a client who has none. */
export function estimateOf(client: string): EstimateCells | undefined {
  const known = ESTIMATE_CASES.find((one) => one.client === client);
  if (known === undefined) return undefined;
  const sheet = `'${sheetName(known)}'!`;
  return { totalTax: `${sheet}${TOTAL_TAX}`, payments: `${sheet}${PAYMENTS}` };
}

function addEstimateSheet(workbook: Workbook, one: EstimateCase): void {
  const sheet = workbook.addWorksheet(sheetName(one));
  setWidths(sheet, [34, 18, 4, 46, 14, 60]);
  putLabel(sheet, "A1", `${one.client}, 2025: ${one.about}`);
  sheet.getCell("A2").value = "Filing status";
  sheet.getCell("B2").value = one.status;
  styleInput(sheet.getCell("B2"));
  const items = `A${FIRST_ITEM_ROW}:B${FIRST_ITEM_ROW + ITEM_ROWS - 1}`;
  sheet.getCell("A3").value = "Total tax, line 4";
  putFormula(sheet, TOTAL_TAX, `EXT.LIABILITY(2025,B2,${items})`, MONEY);
  sheet.getCell("A4").value = "Payments, line 5";
  putFormula(sheet, PAYMENTS, `EXT.PAYMENTSTOTAL(${items})`, MONEY);
  sheet.getCell("A5").value = "Shortfall, line 6";
  putFormula(sheet, "B5", `EXT.SHORTFALL(${TOTAL_TAX},${PAYMENTS})`, MONEY);

  sheet.getCell("A7").value = "Known so far";
  sheet.getCell("B7").value = "Amount";
  styleHeadings(sheet, 7, 20);
  for (let index = 0; index < ITEM_ROWS; index += 1) {
    const row = FIRST_ITEM_ROW + index;
    const [label, amount] = [sheet.getCell(`A${row}`), sheet.getCell(`B${row}`)];
    const known = one.items[index];
    if (known) [label.value, amount.value] = known;
    amount.numFmt = "#,##0.##";
    styleInput(label);
    styleInput(amount);
  }
  putLabel(sheet, "D1", "How the total comes about");
  putFormula(sheet, "D2", `EXT.LIABILITYLINES(2025,B2,${items})`);
}

/** Adds an estimate of total tax for each of five typical clients; the client list reads them. */
export function addEstimateSheets(workbook: Workbook): void {
  for (const one of ESTIMATE_CASES) addEstimateSheet(workbook, one);
}
