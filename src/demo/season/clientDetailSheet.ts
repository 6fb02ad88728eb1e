import type { Workbook } from "@cj-tech-master/excelts";
import { DATE_FORMAT, MONEY_FORMAT } from "../../functions/cells/answerCell";
import { cellAddress } from "../../host/cellAddress";
import { addClientChoice, BELOW_CHOICE, CHOICE } from "./clientChoice";
import type { SampleClient } from "./clients";
import { setPage } from "./pageSetup";
import { putFormula, putLabel, setWidths, styleFilledTable } from "./sheetStyle";

const DEADLINES = BELOW_CHOICE + 1;
const CHARGES = DEADLINES + 26;

/** Adds one client's deadlines, and the calculation of penalties and interest, each as one formula. */
export function addClientDetailSheet(workbook: Workbook, clients: readonly SampleClient[]): void {
  const sheet = workbook.addWorksheet("Client detail");
  setWidths(sheet, [70, 14, 14, 16, 30, 14, 18, 14, 80]);
  addClientChoice(sheet, clients, "Client detail", "Sorrel");
  const { taxYear, state, filerType, totalTax, paidOnTime, paidOn, filedOn } = CHOICE;
  const { validExtension, filer, postponement } = CHOICE;
  putLabel(sheet, `A${DEADLINES - 1}`, "Deadlines");
  const calendar = `EXT.CALENDAR(${taxYear},${state},${filerType})`;
  for (const [column, columns, chosen] of [
    [1, 7, "1,2,3,4,5,6,7"],
    [9, 1, "8"],
  ] as const) {
    styleFilledTable(sheet, { row: DEADLINES, column }, { rows: 24, columns });
    putFormula(sheet, cellAddress(DEADLINES, column), `CHOOSECOLS(${calendar},${chosen})`);
  }
  for (let row = DEADLINES + 1; row < DEADLINES + 24; row += 1)
    for (const column of ["B", "D", "G"]) sheet.getCell(`${column}${row}`).numFmt = DATE_FORMAT;
  putLabel(sheet, `A${CHARGES - 1}`, "Penalties and interest (planned), line by line");
  styleFilledTable(sheet, { row: CHARGES, column: 1 }, { rows: 14, columns: 9 });
  const charges = (name: string): string =>
    `EXT.${name}(${taxYear},${totalTax},${paidOnTime},${paidOn},${filedOn},${validExtension},${filer},AssumedRate,,${postponement})`;
  putFormula(sheet, `A${CHARGES}`, charges("CHARGELINES"));
  putLabel(sheet, "D3", "Penalties and interest (planned)");
  putFormula(sheet, "F3", charges("CHARGES"), MONEY_FORMAT);
  setPage(sheet, { hasClientTitle: true });
}
