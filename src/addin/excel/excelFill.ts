import { noteVersion, supports } from "./excelRequest";
import { POINTS_PER_CHARACTER } from "./excelInsert";
import {
  filledAddress,
  fillPlan,
  LIST_CHANGED,
  refuseFilled,
  type PlannedColumn,
} from "../workbook/fillPlan";
import {
  NotDone,
  type FilledColumns,
  type FormulaColumn,
  type SelectedList,
} from "../workbook/workbookHost";

/** Characters of formulas that are written at once: a request to Excel has a limit of 5 MB. */
const MOST_CHARACTERS = 1_000_000;
const RESIZE = ["ExcelApi", "1.13"] as const;
const COPY = ["ExcelApi", "1.9"] as const;

/** What is there before the columns are written. */
interface Before {
  readonly sheet: Excel.Worksheet;
  readonly table: Excel.Table | undefined;
  /** Rows of the table or of the list with their headings, and with a row of totals. */
  readonly height: number;
  readonly widths: readonly number[];
}

function columnRange(
  sheet: Excel.Worksheet,
  { headingRow, rows }: SelectedList,
  column: number
): Excel.Range {
  return sheet.getRangeByIndexes(headingRow - 1, column - 1, rows.length + 1, 1);
}

async function checked(
  context: Excel.RequestContext,
  list: SelectedList,
  planned: readonly PlannedColumn[]
): Promise<Before> {
  const { headingRow, firstColumn, headings } = list;
  const sheet = context.workbook.worksheets.getItemOrNullObject(list.sheet);
  await context.sync();
  if (sheet.isNullObject) throw new NotDone(LIST_CHANGED);
  sheet.protection.load("protected");
  const row = sheet.getRangeByIndexes(headingRow - 1, firstColumn - 1, 1, headings.length);
  row.load("values");
  const table = list.table === undefined ? undefined : sheet.tables.getItem(list.table);
  table?.load("showTotals");
  const present = planned
    .filter(({ isNew }) => !isNew)
    .map(({ column }) => ({ column, range: columnRange(sheet, list, column) }));
  for (const { range } of present) range.load("formulas");
  const formats = planned.map(({ column }) => {
    const { format } = sheet.getRangeByIndexes(0, column - 1, 1, 1);
    format.load("columnWidth");
    return format;
  });
  await context.sync();
  if (sheet.protection.protected)
    throw new NotDone(
      `The sheet ${list.sheet} is protected. Remove the protection, then try again.`
    );
  const isSame =
    (row.values as unknown[][])[0]?.every((cell, index) => cell === headings[index]) ?? false;
  const isAsRead = present.every(({ column, range }) =>
    (range.formulas as unknown[][]).slice(1).every(([cell], index) => {
      const read = list.formulas[index]?.[column - firstColumn] ?? "";
      return cell === (read === "" ? (list.rows[index]?.[column - firstColumn] ?? "") : read);
    })
  );
  if (!isSame || !isAsRead) throw new NotDone(LIST_CHANGED);
  const height = list.rows.length + 1 + (table?.showTotals === true ? 1 : 0);
  return { sheet, table, height, widths: formats.map(({ columnWidth }) => columnWidth) };
}

async function refuseTaken(
  context: Excel.RequestContext,
  list: SelectedList,
  { sheet, height }: Before,
  count: number
): Promise<void> {
  if (count === 0) return;
  const { headingRow, firstColumn, headings } = list;
  const right = firstColumn - 1 + headings.length;
  const place = sheet.getRangeByIndexes(headingRow - 1, right, height, count);
  place.load("formulas");
  await context.sync();
  refuseFilled(list, place.formulas as unknown[][]);
}

/** Gives the table, or the row of headings, the new columns. */
function widen(
  list: SelectedList,
  { sheet, table, height }: Before,
  added: readonly PlannedColumn[]
): void {
  if (added.length === 0) return;
  const { headingRow, firstColumn, headings } = list;
  const width = headings.length + added.length;
  if (table && !table.showTotals && supports(RESIZE)) {
    table.resize(sheet.getRangeByIndexes(headingRow - 1, firstColumn - 1, height, width));
  } else if (table) {
    for (const { heading } of added) table.columns.add(undefined, undefined, heading);
  } else if (supports(COPY)) {
    const last = sheet.getRangeByIndexes(headingRow - 1, firstColumn + headings.length - 2, 1, 1);
    sheet
      .getRangeByIndexes(headingRow - 1, firstColumn + headings.length - 1, 1, added.length)
      .copyFrom(last, "Formats");
  }
}

/**
 * Writes columns of formulas into the table of a list, or beside a list without a table.
 *
 * @param context - The request.
 * @param list - The list as it was read.
 * @param columns - The columns.
 * @param isOneStep - Whether one Undo takes the request back.
 * @throws NotDone when something is in the way, or the list has changed.
 */
export async function fillList(
  context: Excel.RequestContext,
  list: SelectedList,
  columns: readonly FormulaColumn[],
  isOneStep: boolean
): Promise<FilledColumns> {
  const planned = fillPlan(list, columns);
  const before = await checked(context, list, planned);
  const added = planned.filter(({ isNew }) => isNew);
  await refuseTaken(context, list, before, added.length);
  widen(list, before, added);
  let waiting = 0;
  for (const [index, { column, heading, formulas, format, width, isNew }] of planned.entries()) {
    const range = columnRange(before.sheet, list, column);
    range.formulas = [[heading], ...formulas.map((formula) => [formula])];
    if (format !== "" && isNew) range.numberFormat = [["General"], ...formulas.map(() => [format])];
    // A heading is wrapped, so that the next one does not cut it off.
    if (isNew)
      before.sheet.getRangeByIndexes(list.headingRow - 1, column - 1, 1, 1).format.wrapText = true;
    const wanted = width * POINTS_PER_CHARACTER;
    if ((before.widths[index] ?? wanted) < wanted) range.format.columnWidth = wanted;
    waiting += formulas.reduce((sum, formula) => sum + formula.length, 0);
    if (waiting < MOST_CHARACTERS) continue;
    // All columns of a usual list are written in one request.
    await context.sync();
    waiting = 0;
  }
  noteVersion(context);
  await context.sync();
  return {
    address: filledAddress(list, planned),
    updated: planned.length - added.length,
    undoSteps: isOneStep ? 1 : undefined,
  };
}
