import { calculateApart } from "./excelApart";
import { enterValue, followSelection, goTo, markCells } from "./excelCells";
import { fillList } from "./excelFill";
import { enterAgain } from "./excelFormulas";
import { readList, readTops } from "./excelList";
import { insertFormula, POINTS_PER_CHARACTER } from "./excelInsert";
import { setLook } from "./excelLook";
import { setPage } from "./excelPage";
import {
  newSheetName,
  inOneStep,
  inWorkbook,
  notedVersion,
  noteVersion,
  removeSheet,
  supports,
} from "./excelRequest";
import { INPUT_COLOR, type NewSheet } from "../workbook/newSheet";
import type { SelectedCell, TablePlace, WorkbookHost } from "../workbook/workbookHost";

const SPILL_PARENTS = ["ExcelApi", "1.12"] as const;
function bareAddress(address: string): string {
  return address.slice(address.lastIndexOf("!") + 1).replaceAll("$", "");
}

async function readTables(context: Excel.RequestContext): Promise<TablePlace[]> {
  const { tables } = context.workbook;
  tables.load("items/name");
  await context.sync();
  const read = tables.items.map((table) => {
    const headings = table.getHeaderRowRange();
    headings.load(["values", "rowIndex", "columnIndex"]);
    const body = table.getDataBodyRange();
    body.load("rowCount");
    table.worksheet.load("name");
    return { table, headings, body };
  });
  await context.sync();
  return read.map(({ table, headings, body }) => ({
    name: table.name,
    sheet: table.worksheet.name,
    headings: ((headings.values as unknown[][])[0] ?? []).map(String),
    headingRow: headings.rowIndex + 1,
    firstColumn: headings.columnIndex + 1,
    rows: body.rowCount,
  }));
}

async function readSelected(context: Excel.RequestContext): Promise<SelectedCell> {
  const cell = context.workbook.getActiveCell();
  cell.load(["address", "formulas", "values", "rowIndex", "columnIndex"]);
  cell.worksheet.load("name");
  const parent = supports(SPILL_PARENTS) ? cell.getSpillParentOrNullObject() : undefined;
  parent?.load(["formulas", "rowIndex", "columnIndex", "isNullObject"]);
  await context.sync();
  const filledBy = parent && !parent.isNullObject ? parent : cell;
  const formula = String((filledBy.formulas as (string | number | boolean)[][])[0]?.[0] ?? "");
  const tables = formula.includes("[") ? { tables: await readTables(context) } : {};
  return {
    ...tables,
    sheet: cell.worksheet.name,
    address: bareAddress(cell.address),
    formula: formula.startsWith("=") ? formula : "",
    isEmpty: formula === "" && (cell.values as unknown[][])[0]?.[0] === "",
    rowsBelow: cell.rowIndex - filledBy.rowIndex,
    columnsRight: cell.columnIndex - filledBy.columnIndex,
  };
}

function fill(sheet: Excel.Worksheet, wanted: NewSheet): void {
  const { cells, widths, formats, choices, headingRow, isTable } = wanted;
  const writeRows = (from: number, to: number): void => {
    for (const [index, line] of cells.slice(from, to).entries()) {
      if (line.length === 0) continue;
      sheet.getRangeByIndexes(from + index, 0, 1, line.length).formulas = [[...line]];
    }
  };
  const width = cells[headingRow - 1]?.length ?? 0;
  const below = cells.length - headingRow;
  writeRows(0, headingRow);
  // Excel fills a column of a table only with a formula that is entered into the table.
  if (isTable) sheet.tables.add(sheet.getRangeByIndexes(headingRow - 1, 0, below + 1, width), true);
  writeRows(headingRow, cells.length);
  for (const [column, format] of formats.entries()) {
    if (format === "" || below < 1) continue;
    const block = sheet.getRangeByIndexes(headingRow, column, below, 1);
    block.numberFormat = Array.from({ length: below }, () => [format]);
  }
  for (const [column, words] of choices.entries()) {
    if (words.length === 0 || below < 1) continue;
    const { dataValidation } = sheet.getRangeByIndexes(headingRow, column, below, 1);
    dataValidation.rule = { list: { inCellDropDown: true, source: words.join(",") } };
  }
  for (const [column, characters] of widths.entries())
    sheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = characters * POINTS_PER_CHARACTER;
  const headings = sheet.getRangeByIndexes(headingRow - 1, 0, 1, Math.max(width, 1));
  headings.format.font.bold = true;
  headings.format.wrapText = true;
  for (const look of wanted.looks ?? []) setLook(sheet, look);
  setPage(sheet, wanted);
  for (const address of wanted.inputs ?? [])
    sheet.getRange(address).format.fill.color = INPUT_COLOR;
  const { frozenColumns = 0 } = wanted;
  if (frozenColumns === 0) sheet.freezePanes.freezeRows(headingRow);
  else sheet.freezePanes.freezeAt(sheet.getRangeByIndexes(0, 0, headingRow, frozenColumns));
  sheet.activate();
}

/** The workbook that is open in Excel. */
export const excelWorkbook: WorkbookHost = {
  selectedCell: () => inWorkbook(readSelected),

  putFormula: (formula, look) =>
    inWorkbook(async (context) =>
      insertFormula(context, await readSelected(context), formula, look)
    ),

  addSheet: (wanted) =>
    inWorkbook(async (context) => {
      const name = await newSheetName(context, wanted.name);
      fill(context.workbook.worksheets.add(name), wanted);
      noteVersion(context);
      try {
        await context.sync();
      } catch (thrown) {
        await removeSheet(context, name).catch(() => undefined);
        throw thrown;
      }
      return name;
    }),

  recalculate: () =>
    inWorkbook(async (context) => {
      const { worksheets, application } = context.workbook;
      worksheets.load("items/name");
      await context.sync();
      let entered = 0;
      for (const sheet of worksheets.items) entered += await enterAgain(context, sheet);
      application.calculate("Full");
      noteVersion(context);
      await context.sync();
      return entered;
    }),

  selectedList: () => inWorkbook(readList),
  fillColumns: (list, columns) =>
    inOneStep((context, isOneStep) => fillList(context, list, columns, isOneStep)),
  followSelection,
  enterValue,
  sheetTops: () => inWorkbook(readTops),
  goTo,
  markCells,

  calculateApart: (formulas) => inWorkbook((context) => calculateApart(context, formulas)),

  lastVersion: () => inWorkbook(notedVersion),
};
