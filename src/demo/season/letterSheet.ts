import type { Workbook } from "@cj-tech-master/excelts";
import type { SampleClient } from "./clients";
import { clientBlock } from "./columnFormulasSheet";
import { setPage } from "./pageSetup";
import { REQUEST_CELLS } from "./requestSheet";
import { putFormula, putInput, setBold } from "./sheetStyle";

/** The sheet's name. */
export const LETTER_SHEET = "Letter";
/** Characters in a line of the letter. */
export const LETTER_WIDTH = 86;
/** The row of the first paragraph. */
export const FIRST_PARAGRAPH = 7;
/** Lines that fit into the row of each paragraph, with an empty one below it. */
export const PARAGRAPH_LINES = [6, 6, 5, 3, 3, 3] as const;

const LINE_HEIGHT = 15;

/** The name of a sheet as a reference spells it. */
function quoted(sheet: string): string {
  return `'${sheet.replaceAll("'", "''")}'!`;
}

/**
 * Adds the letter to the client of a request sheet, one paragraph a cell, which prints on one page.
 *
 * @param workbook - The workbook.
 * @param clients - The clients of the sample firm.
 * @param names - The name of the request sheet, and of this one.
 */
export function addLetterSheet(
  workbook: Workbook,
  clients: readonly SampleClient[],
  names: { readonly request: string; readonly letter: string }
): void {
  const sheet = workbook.addWorksheet(names.letter, {
    views: [{ state: "normal", showGridLines: false }],
  });
  sheet.getColumn(1).width = LETTER_WIDTH;
  const at = (cells: string): string =>
    cells.replaceAll(/\$[A-Z]+\$\d+/g, (cell) => `${quoted(names.request)}${cell}`);
  const { client, taxYear, totalTax, payments, paidWithRequest, record } = REQUEST_CELLS;
  const { filer, postponement, stillNeeded } = REQUEST_CELLS;
  putFormula(sheet, "A1", at(client));
  setBold(sheet.getCell("A1"));
  putFormula(sheet, "A3", 'TEXT(AsOf,"mmmm d, yyyy")');
  putInput(sheet, "A5", "Dear ____________________:");
  const planned = (heading: string): string => {
    const found = `XLOOKUP(${at(client)},${clientBlock(clients, "Client")},${clientBlock(clients, heading)})`;
    return `IF(${found}=0,"",${found})`;
  };
  const letter = `EXT.MEMOLINES(${at(`${taxYear},${totalTax},${payments},${paidWithRequest}`)},AsOf,${at(record)},,${planned("Planned filing date")},${planned("Planned payment date")},"full",${at(stillNeeded)},${at(filer)},AssumedRate,${at(postponement)})`;
  for (const [index, lines] of PARAGRAPH_LINES.entries()) {
    const row = FIRST_PARAGRAPH + index;
    const paragraph = `INDEX(${letter},${index + 2},2)`;
    // An error of the letter is shown once, in place of its first paragraph.
    putFormula(sheet, `A${row}`, index === 0 ? paragraph : `IFERROR(${paragraph},"")`);
    sheet.getCell(`A${row}`).alignment = { wrapText: true, vertical: "top" };
    sheet.getRow(row).height = lines * LINE_HEIGHT;
  }
  const below = FIRST_PARAGRAPH + PARAGRAPH_LINES.length;
  putInput(sheet, `A${below}`, "Sincerely,");
  setPage(sheet, { pagesTall: 1, isPortrait: true });
}
