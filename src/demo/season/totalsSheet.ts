import type { Workbook } from "@cj-tech-master/excelts";
import { clientBlock, clientColumn } from "./clientsSheet";
import { SEASON_CLIENTS } from "./clients";
import { DAY, MONEY, putFormula, putLabel, setWidths, styleHeadings } from "./sheetStyle";

/** The sheet's name. */
export const TOTALS_SHEET = "Totals";
const FIRST_STATE_ROW = 4;
/** Where the totals of the whole practice begin. */
export const OVERALL_CORNER = { row: FIRST_STATE_ROW, column: 8 };

const STATES = [...new Set(SEASON_CLIENTS.map((client) => client.state).filter(Boolean))].sort();

/** Adds the totals of the practice, by state and altogether. */
export function addTotalsSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet(TOTALS_SHEET, { views: [{ state: "frozen", ySplit: 3 }] });
  setWidths(sheet, [14, 10, 16, 16, 16, 16, 4, 34, 16]);
  putLabel(sheet, "A1", "By state");
  putLabel(sheet, "H1", "Altogether");
  const headings = [
    "State",
    "Clients",
    "Shortfall",
    "Suggested",
    "Still to send",
    "Charges as planned",
  ];
  for (const [index, heading] of headings.entries()) sheet.getCell(3, index + 1).value = heading;
  styleHeadings(sheet, 3);
  const states = clientBlock(clientColumn("State"));
  const summed = ["Shortfall", "Suggested payment", "Still to send", "Charges as planned"];
  for (const [index, state] of STATES.entries()) {
    const row = FIRST_STATE_ROW + index;
    sheet.getCell(`A${row}`).value = state;
    putFormula(sheet, `B${row}`, `COUNTIFS(${states},A${row})`);
    for (const [position, heading] of summed.entries()) {
      const letter = String.fromCharCode("C".charCodeAt(0) + position);
      const block = clientBlock(clientColumn(heading));
      putFormula(sheet, `${letter}${row}`, `SUMIFS(${block},${states},$A${row})`, MONEY);
    }
  }
  addOverall(workbook);
}

function addOverall(workbook: Workbook): void {
  const sheet = workbook.getWorksheet(TOTALS_SHEET);
  if (sheet === undefined) return;
  const block = (heading: string) => clientBlock(clientColumn(heading));
  const lines: [label: string, formula: string, format: string][] = [
    ["Clients", `COUNTA(${block("Client")})`, "0"],
    ["Total tax, estimated", `SUM(${block("Total tax (estimate)")})`, MONEY],
    ["Payments so far", `SUM(${block("Payments so far")})`, MONEY],
    ["Paid with requests", `SUM(${block("Paid with request")})`, MONEY],
    ["Shortfall", `SUM(${block("Shortfall")})`, MONEY],
    ["Suggested with the request", `SUM(${block("Suggested payment")})`, MONEY],
    ["Still to send", `SUM(${block("Still to send")})`, MONEY],
    ["Charges if all goes as planned", `SUM(${block("Charges as planned")})`, MONEY],
    ["Clients with charges", `COUNTIFS(${block("Charges as planned")},">0")`, "0"],
    ["Highest charges of a client", `MAX(${block("Charges as planned")})`, MONEY],
    ["Whose", `XLOOKUP(I13,${block("Charges as planned")},${block("Client")})`, "General"],
    ["Clients without the presumption", `COUNTIFS(${block("Presumption met")},"no")`, "0"],
    ["Last extended due date", `MAX(${block("Extended due")})`, DAY],
    ["In words", 'TEXT(I16,"dddd, mmmm d, yyyy")', "General"],
  ];
  for (const [index, [label, formula, format]] of lines.entries()) {
    const row = FIRST_STATE_ROW + index;
    sheet.getCell(`H${row}`).value = label;
    putFormula(sheet, `I${row}`, formula, format);
  }
}
