import { supports } from "./excelRequest";
import { listAround, listInTable, refuseTooManyRows, type SheetCells } from "../workbook/listArea";
import { TOP_COLUMNS, TOP_ROWS, type SheetTop } from "../workbook/sheetTop";
import { NotDone, type SelectedList } from "../workbook/workbookHost";

/** Cells that are read at once: a reply of Excel has a limit of 5 MB. */
const MOST_CELLS_READ = 20_000;
/** The most cells of a sheet in which a list is looked for. */
const MOST_CELLS = 1_000_000;
const PIVOT_TABLES = ["ExcelApi", "1.12"] as const;
const MERGED_AREAS = ["ExcelApi", "1.13"] as const;

interface Place {
  readonly rowIndex: number;
  readonly columnIndex: number;
  readonly rowCount: number;
  readonly columnCount: number;
}

const PLACE = ["rowIndex", "columnIndex", "rowCount", "columnCount"];

/** The values and formulas of an area, read in parts. */
async function cellsOf(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { rowIndex, columnIndex, rowCount, columnCount }: Place
): Promise<SheetCells> {
  const rowsAtOnce = Math.max(1, Math.floor(MOST_CELLS_READ / columnCount));
  const values: unknown[][] = [];
  const formulas: unknown[][] = [];
  for (let row = 0; row < rowCount; row += rowsAtOnce) {
    const rows = Math.min(rowsAtOnce, rowCount - row);
    const part = sheet.getRangeByIndexes(rowIndex + row, columnIndex, rows, columnCount);
    part.load(["values", "formulas"]);
    await context.sync();
    values.push(...(part.values as unknown[][]));
    formulas.push(...(part.formulas as unknown[][]));
  }
  return { sheet: sheet.name, top: rowIndex + 1, left: columnIndex + 1, values, formulas };
}

/** The first cells of each sheet that is not hidden. */
export async function readTops(context: Excel.RequestContext): Promise<readonly SheetTop[]> {
  const { worksheets } = context.workbook;
  worksheets.load(["items/name", "items/visibility"]);
  await context.sync();
  const tops = worksheets.items
    .filter(({ visibility }) => visibility === "Visible")
    .map((sheet) => ({ sheet, range: sheet.getRangeByIndexes(0, 0, TOP_ROWS, TOP_COLUMNS) }));
  for (const { range } of tops) range.load("values");
  await context.sync();
  return tops.map(({ sheet, range }) => ({
    sheet: sheet.name,
    values: range.values as unknown[][],
  }));
}

/** The table of the sheet that a cell is in. */
async function tableAt(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  row: number,
  column: number
): Promise<{ readonly name: string; readonly place: Place } | undefined> {
  sheet.tables.load("items/name");
  await context.sync();
  const places = sheet.tables.items.map((table) => {
    const [whole, body] = [table.getRange(), table.getDataBodyRange()];
    table.load(["name", "showHeaders"]);
    whole.load(PLACE);
    body.load("rowCount");
    return { table, whole, body };
  });
  await context.sync();
  const found = places.find(
    ({ whole: { rowIndex, columnIndex, rowCount, columnCount } }) =>
      row >= rowIndex &&
      row < rowIndex + rowCount &&
      column >= columnIndex &&
      column < columnIndex + columnCount
  );
  if (!found) return undefined;
  if (!found.table.showHeaders)
    throw new NotDone(
      "The table has no row of headings. Select Header Row in the design of the table."
    );
  const { rowIndex, columnIndex, columnCount } = found.whole;
  const rowCount = found.body.rowCount + 1;
  return { name: found.table.name, place: { rowIndex, columnIndex, columnCount, rowCount } };
}

async function refusePivotTable(context: Excel.RequestContext, cell: Excel.Range): Promise<void> {
  if (!supports(PIVOT_TABLES)) return;
  const pivots = cell.getPivotTables(false);
  pivots.load("items/name");
  await context.sync();
  const [pivot] = pivots.items;
  if (pivot)
    throw new NotDone(
      `The selected cell is in the pivot table ${pivot.name}. Select a cell of the list that it summarizes.`
    );
}

async function refuseMergedHeadings(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { headingRow, firstColumn, headings }: SelectedList
): Promise<void> {
  if (!supports(MERGED_AREAS)) return;
  const merged = sheet
    .getRangeByIndexes(headingRow - 1, firstColumn - 1, 1, headings.length)
    .getMergedAreasOrNullObject();
  merged.load("address");
  await context.sync();
  if (!merged.isNullObject)
    throw new NotDone(
      `The headings in row ${headingRow} have merged cells. Unmerge them so that each column has its own heading.`
    );
}

/**
 * The list around the selected cell, or the table that it is in.
 *
 * @param context - The request.
 * @throws NotDone when there is no list, or one that cannot be worked on.
 */
export async function readList(context: Excel.RequestContext): Promise<SelectedList> {
  const cell = context.workbook.getActiveCell();
  cell.load(["rowIndex", "columnIndex"]);
  const sheet = cell.worksheet;
  sheet.load("name");
  await context.sync();
  const [row, column] = [cell.rowIndex, cell.columnIndex];
  await refusePivotTable(context, cell);
  const table = await tableAt(context, sheet, row, column);
  if (table) {
    refuseTooManyRows(table.place.rowCount - 1);
    return listInTable(table.name, await cellsOf(context, sheet, table.place), row + 1);
  }
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load(PLACE);
  await context.sync();
  if (used.isNullObject)
    throw new NotDone("The sheet is empty. Enter a client list, or build one here.");
  if (used.rowCount * used.columnCount > MOST_CELLS) refuseTooManyRows(used.rowCount - 1);
  const list = listAround(await cellsOf(context, sheet, used), row + 1, column + 1);
  await refuseMergedHeadings(context, sheet, list);
  return list;
}
