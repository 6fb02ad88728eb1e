import { meaningsOf } from "../../functions/arguments/readHeadings";
import { cellAddress } from "../../host/cellAddress";
import { hasNoEntry } from "./entryCell";
import { TOP_ROWS, type SheetTop } from "./sheetTop";
import { NotDone } from "./workbookHost";

/** How many columns of a client list a row of headings has; 0 without those that a client list needs. */
function columnsIn(line: readonly unknown[], taxYear: number): number {
  const read = meaningsOf("clientList", line, taxYear).flatMap(({ field }) => field ?? []);
  return read.includes("totalTax") && read.includes("payments") ? read.length : 0;
}

/** A sheet with a client list. */
interface FoundList {
  readonly sheet: string;
  /** The first cell below the headings. */
  readonly address: string;
  readonly columns: number;
}

function listIn({ sheet, values }: SheetTop, taxYear: number): readonly FoundList[] {
  const columns = values.map((line) => columnsIn(line, taxYear));
  const row = columns.findIndex((count) => count > 0);
  if (row < 0) return [];
  const first = values[row]?.findIndex((cell) => !hasNoEntry(cell)) ?? 0;
  return [{ sheet, address: cellAddress(row + 2, first + 1), columns: columns[row] ?? 0 }];
}

/**
 * The first client of the client list in a workbook. Another table can have a column for the tax and one for the payments: the list is
 * the one with the most columns of a client list.
 *
 * @param tops - The first cells of each sheet.
 * @param taxYear - The tax year, for headings that name one.
 * @returns The sheet, and the first cell below the headings.
 * @throws NotDone when no sheet has a client list, or several with as many columns.
 */
export function theClientList(
  tops: readonly SheetTop[],
  taxYear: number
): { readonly sheet: string; readonly address: string } {
  const found = tops.flatMap((top) => listIn(top, taxYear));
  const most = Math.max(0, ...found.map(({ columns }) => columns));
  const [list, ...others] = found.filter(({ columns }) => columns === most);
  if (!list)
    throw new NotDone(
      `No sheet has a client list in its first ${TOP_ROWS} rows. A client list has headings such as Client, Total tax and Total payments.`
    );
  if (others.length > 0)
    throw new NotDone(
      `Several sheets have a client list: ${[list, ...others].map(({ sheet }) => sheet).join(", ")}. Select a client on one of them.`
    );
  return { sheet: list.sheet, address: list.address };
}
