import type { Workbook } from "@cj-tech-master/excelts";
import { DATE_FORMAT, MONEY_FORMAT } from "../../functions/cells/answerCell";
import { addClientChoice, BELOW_CHOICE, CHOICE } from "./clientChoice";
import type { SampleClient } from "./clients";
import { clientBlock } from "./columnFormulasSheet";
import { setPage } from "./pageSetup";
import { putFormula, putLabel, putNote, setWidths, styleHeadings, styleTotal } from "./sheetStyle";

/** The sheet's name. */
export const COST_SHEET = "Cost of waiting";

const HEADINGS_ROW = BELOW_CHOICE + 2;
const FIRST = HEADINGS_ROW + 1;
/** The payment due date and the same day of the twelve months after it. */
const DATES = 13;
const LAST = FIRST + DATES - 1;

const block = (column: string): string => `'${COST_SHEET}'!$${column}$${FIRST}:$${column}$${LAST}`;

/** The cells of the table, as a chart refers to them. */
export const COST_TABLE = {
  dates: block("A"),
  withExtension: block("C"),
  without: block("D"),
};

/**
 * Adds the penalties and interest of a client by the date of filing and paying, month by month for a year.
 *
 * @param workbook - The workbook.
 * @param clients - The clients of the sample firm.
 * @param chosen - The cell of another sheet in which the client is chosen.
 */
export function addCostOfWaitingSheet(
  workbook: Workbook,
  clients: readonly SampleClient[],
  chosen: string
): void {
  const sheet = workbook.addWorksheet(COST_SHEET, {
    views: [{ state: "normal", showGridLines: false }],
  });
  setWidths(sheet, [30, 16, 16, 16, 16, 44]);
  addClientChoice(sheet, clients, COST_SHEET, `=${chosen}`);
  putNote(sheet, "D3", "Choose the client on the first sheet.");
  putLabel(sheet, `A${BELOW_CHOICE}`, "Penalties and interest by date");
  putNote(
    sheet,
    `A${BELOW_CHOICE + 1}`,
    "If the return is filed and the balance paid on the date. Rates after the last published quarter are assumed: see Assumptions."
  );
  for (const [index, heading] of [
    "Chart label",
    "Filed and paid on",
    "With extension",
    "Without extension",
    "Saved by extension",
  ].entries())
    sheet.getCell(HEADINGS_ROW, index + 1).value = heading;
  styleHeadings(sheet, HEADINGS_ROW, 32);
  const { taxYear, totalTax, paidOnTime, filer, postponement } = CHOICE;
  const dates = `B${FIRST}:B${LAST}`;
  for (let row = FIRST; row <= LAST; row += 1) {
    const date =
      row === FIRST
        ? `EXT.PAYBY(${taxYear},${filer},${postponement})`
        : `EDATE(B${FIRST},${row - FIRST})`;
    putFormula(sheet, `B${row}`, date, DATE_FORMAT);
    // Text, because a chart over dates would leave room for each date.
    putFormula(sheet, `A${row}`, `TEXT(B${row},"m/d/yy")`);
    putFormula(sheet, `E${row}`, `D${row}-C${row}`, MONEY_FORMAT);
    for (const column of ["C", "D"]) sheet.getCell(`${column}${row}`).numFmt = MONEY_FORMAT;
  }
  for (const [column, extension] of [
    ["C", "yes"],
    ["D", "no"],
  ] as const)
    putFormula(
      sheet,
      `${column}${FIRST}`,
      `EXT.CHARGES(${taxYear},${totalTax},${paidOnTime},${dates},${dates},"${extension}",${filer},AssumedRate,,${postponement})`,
      MONEY_FORMAT
    );
  const planned = LAST + 1;
  sheet.getCell(`A${planned}`).value = "Planned";
  putFormula(sheet, `B${planned}`, CHOICE.filedOn, DATE_FORMAT);
  const listed = `XLOOKUP(${CHOICE.client},${clientBlock(clients, "Client")},${clientBlock(clients, "Penalties and interest (planned)")})`;
  putFormula(sheet, `C${planned}`, `IF(${CHOICE.validExtension}="yes",${listed},"")`, MONEY_FORMAT);
  putFormula(sheet, `D${planned}`, `IF(${CHOICE.validExtension}="yes","",${listed})`, MONEY_FORMAT);
  styleTotal(sheet, planned, 5);
  setPage(sheet, { hasClientTitle: true });
}
