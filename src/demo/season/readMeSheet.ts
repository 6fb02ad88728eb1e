import type { Workbook } from "@cj-tech-master/excelts";

/** What a reader must know before using any number of the sample, in two sentences. */
export const CAUTIONS = [
  "Estimates only, not tax advice: check the current official text; the licensed preparer decides.",
  "Every client and every amount is invented; no person or firm is meant.",
] as const;

const MORE = [
  "The sheet Clients holds what a preparer types (light cells) and what follows from it. A column of",
  "dates or charges is one formula at its top that fills the column; ordinary formulas stand beside it.",
  "Season counts the clients by stage on the day named in Assumptions, with the whole list in one formula.",
  "Request is one client's sheet: its lines, ways to make it, address, what is wrong, state, words to send.",
  "What if and One client take the client chosen in their cell B1. Totals adds up the practice.",
  "Assumptions holds what counts for every client. Rules says which figures the answers rest on.",
  "The extension gives time to file, not time to pay: interest runs from the day the tax was due.",
  "Days are fixed in this sample, so that it shows the same answers whenever it is opened.",
];

/** Adds the page that says what the workbook is and how far to trust it. */
export function addReadMeSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Read me");
  sheet.getColumn(1).width = 100;
  const title = sheet.getCell("A1");
  title.value = "A season of extension requests: an invented practice";
  title.font = { bold: true, size: 14 };
  for (const [index, sentence] of [...CAUTIONS, "", ...MORE].entries()) {
    const cell = sheet.getCell(index + 3, 1);
    cell.value = sentence || null;
    cell.alignment = { wrapText: true };
    if (index < CAUTIONS.length) cell.font = { bold: true };
  }
}
