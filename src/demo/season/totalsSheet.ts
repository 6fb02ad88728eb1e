import type { Workbook, Worksheet } from "@cj-tech-master/excelts";
import { DATE, MONEY, WHOLE_NUMBER } from "../../addin/clientList";
import { cellAddress } from "../../host/cellAddress";
import type { SampleClient } from "./clients";
import { clientBlock } from "./clientsSheet";
import { putFormula, putLabel, setWidths, styleHeadings } from "./sheetStyle";

/** The sheet's name. */
export const TOTALS_SHEET = "Totals";
const FIRST_STATE_ROW = 4;
/** The corner of the totals of all clients. */
export const OVERALL_CORNER = { row: FIRST_STATE_ROW, column: 8 };

const SUMMED = [
  ...["Balance due", "Suggested payment", "Remaining to pay", "Penalties and interest (planned)"],
];

/** Adds the totals of the firm, by state and for all clients. */
export function addTotalsSheet(workbook: Workbook, clients: readonly SampleClient[]): void {
  const sheet = workbook.addWorksheet(TOTALS_SHEET, { views: [{ state: "frozen", ySplit: 3 }] });
  setWidths(sheet, [14, 10, 16, 16, 16, 16, 4, 40, 24]);
  const block = (heading: string): string => clientBlock(clients, heading);
  addStates(sheet, clients, block);
  addOverall(sheet, block);
}

function addStates(
  sheet: Worksheet,
  clients: readonly SampleClient[],
  block: (heading: string) => string
): void {
  putLabel(sheet, "A1", "By state");
  for (const [index, heading] of ["State", "Clients", ...SUMMED].entries())
    sheet.getCell(3, index + 1).value = heading;
  styleHeadings(sheet, 3);
  const entered = clients.map((client) => client.get("State") ?? "").map(String);
  const states = [...new Set(entered)].filter(Boolean).sort();
  for (const [index, state] of states.entries()) {
    const row = FIRST_STATE_ROW + index;
    sheet.getCell(`A${row}`).value = state;
    putFormula(sheet, `B${row}`, `COUNTIFS(${block("State")},A${row})`);
    for (const [position, heading] of SUMMED.entries()) {
      const sum = `SUMIFS(${block(heading)},${block("State")},$A${row})`;
      putFormula(sheet, cellAddress(row, position + 3), sum, MONEY);
    }
  }
}

function addOverall(sheet: Worksheet, block: (heading: string) => string): void {
  putLabel(sheet, "H1", "All clients");
  const planned = block("Penalties and interest (planned)");
  const lines: readonly (readonly [label: string, formula: string, format: string])[] = [
    ["Clients", `COUNTA(${block("Client")})`, WHOLE_NUMBER],
    ["Estimated total tax", `SUM(${block("Estimated total tax")})`, MONEY],
    ["Total payments", `SUM(${block("Total payments")})`, MONEY],
    ["Paid with requests", `SUM(${block("Paid with request")})`, MONEY],
    ["Balance due", `SUM(${block("Balance due")})`, MONEY],
    ["Suggested payments", `SUM(${block("Suggested payment")})`, MONEY],
    ["Remaining to pay", `SUM(${block("Remaining to pay")})`, MONEY],
    ["Penalties and interest (planned)", `SUM(${planned})`, MONEY],
    ["Clients with penalties or interest", `COUNTIFS(${planned},">0")`, WHOLE_NUMBER],
    ["Highest penalties and interest of a client", `MAX(${planned})`, MONEY],
    ["Client with the highest amount", `XLOOKUP(I13,${planned},${block("Client")})`, "General"],
    ["Clients not meeting the 90% test", `COUNTIFS(${block("90% test met")},"no")`, WHOLE_NUMBER],
    ["Last extended due date", `MAX(${block("Extended due date")})`, DATE],
    ["Last extended due date (long form)", 'TEXT(I16,"dddd, mmmm d, yyyy")', "General"],
  ];
  for (const [index, [label, formula, format]] of lines.entries()) {
    const row = FIRST_STATE_ROW + index;
    sheet.getCell(`H${row}`).value = label;
    putFormula(sheet, `I${row}`, formula, format);
  }
}
