import type { Workbook } from "@cj-tech-master/excelts";
import { setPage } from "./pageSetup";
import { putTitle } from "./sheetStyle";

/** What a reader must know before using any figure of the sample. */
export const CAUTIONS = [
  "Estimates only, not tax advice. Check each figure against the current official text.",
  "The licensed tax professional makes the final decision.",
  "The sample firm, its clients and all amounts are fictional.",
] as const;

/** What to do in Excel if the results are missing, for the top of the first sheet. */
export const EXCEL_HINTS = [
  "In Excel, open the add-in before this workbook: select its icon under Home, Add-ins. If cells show #NAME?,",
  "open its function guide and select Recalculate this workbook.",
] as const;

const SHEETS = [
  "Season at a glance: the as-of date, the clients by status and severity, three charts, and the clients with a",
  "problem or a risk, worst first. Select a name to go to the client's row.",
  "Clients: the name stays in view. Beside it what the add-in answers with one ROSTER formula, then what the",
  "preparer enters (light cells), then further answers.",
  "Extension request and Letter: one client on one page each. Choose the client in cell F3 of Extension request.",
  "Cost of waiting: penalties and interest month by month, with and without the extension.",
  "Compare payments: what a larger or earlier payment saves. Suggested payment: what to pay, and why.",
  "Partial payments: the payment history of one client, with penalties and interest to date.",
  "Projection: an estimate of the new year's tax from last year's items and the expected changes.",
  "2026 estimated tax: first installments of the new year, and an estimated tax penalty for 2025.",
  "Total tax: the estimated total tax of five clients, line by line.",
  "Totals: balances due, payments, and penalties and interest of the firm, by state and for all clients.",
  "Client detail: one client's deadlines, and the calculation of penalties and interest.",
  "Column formulas: the answers of the client list, with one function a column and a few ordinary formulas.",
  "Assumptions: what applies to every client. Rule tables: the rules behind the results, with their sources.",
  "",
  "Each sheet prints one page wide, with page numbers. A request and a letter print on one page each.",
  "An extension of time to file is not an extension of time to pay. Interest accrues from the payment due date.",
  "The as-of date is fixed in this sample, so that it shows the same results whenever it is opened.",
];

/** Adds the sheet that says what the workbook is and how far to rely on it. */
export function addReadMeSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Read me");
  sheet.getColumn(1).width = 105;
  putTitle(sheet, "Sample firm: extension requests");
  for (const [index, sentence] of [...CAUTIONS, "", ...SHEETS].entries()) {
    const cell = sheet.getCell(index + 3, 1);
    cell.value = sentence || null;
    cell.alignment = { wrapText: true };
    if (index < CAUTIONS.length) cell.font = { bold: true };
  }
  setPage(sheet);
}
