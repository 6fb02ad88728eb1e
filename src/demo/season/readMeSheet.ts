import type { Workbook } from "@cj-tech-master/excelts";

/** What a reader must know before using any figure of the sample. */
export const CAUTIONS = [
  "Estimates only, not tax advice. Check each figure against the current official text.",
  "The licensed tax professional makes the final decision.",
  "The sample firm, its clients and all amounts are fictional.",
] as const;

const SHEETS = [
  "In Excel, open the add-in before this workbook: select its icon under Home, Add-ins. If cells show #NAME?,",
  "open its function guide and select Recalculate this workbook.",
  "",
  "Clients: what a preparer enters (light cells), and beside it what the add-in calculates. One formula at",
  "the top of a column fills it for all clients. Ordinary formulas follow to the right.",
  "Summary: the number of clients by status on the as-of date, and the whole client list in one formula.",
  "Extension request: one client's Form 4868 lines, methods, mailing address, issues, state return and letter.",
  "Totals: balances due, payments, and penalties and interest of the firm, by state and for all clients.",
  "Compare payments: what a larger or earlier payment saves. Choose the client in cell B1.",
  "Partial payments: the payment history of one client, with penalties and interest to date.",
  "2026 estimated tax: first installments of the new year, and an estimated tax penalty for 2025.",
  "Total tax: the estimated total tax of five clients, line by line.",
  "Client detail: one client's deadlines, and the calculation of penalties and interest.",
  "Assumptions: what applies to every client. Rule tables: the rules behind the results, with their sources.",
  "",
  "An extension of time to file is not an extension of time to pay. Interest accrues from the payment due date.",
  "The as-of date is fixed in this sample, so that it shows the same results whenever it is opened.",
];

/** Adds the sheet that says what the workbook is and how far to rely on it. */
export function addReadMeSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Read me");
  sheet.getColumn(1).width = 105;
  const title = sheet.getCell("A1");
  title.value = "Sample firm: extension requests";
  title.font = { bold: true, size: 14 };
  for (const [index, sentence] of [...CAUTIONS, "", ...SHEETS].entries()) {
    const cell = sheet.getCell(index + 3, 1);
    cell.value = sentence || null;
    cell.alignment = { wrapText: true };
    if (index < CAUTIONS.length) cell.font = { bold: true };
  }
}
