import { version } from "../rules/version";
import { enterAgain } from "./excelFormulas";
import {
  NotDone,
  type NewSheet,
  type SelectedCell,
  type TablePlace,
  type WorkbookHost,
} from "./workbookHost";

const SPILL_PARENTS = ["ExcelApi", "1.12"] as const;
const SETTINGS = ["ExcelApi", "1.4"] as const;
const MOST_SHEETS_OF_A_NAME = 99;
/** The setting of the workbook with the version of the add-in that last changed it. */
const VERSION_SETTING = "extensionSeasonVersion";

const supports = ([name, minimum]: readonly [string, string]): boolean =>
  Office.context.requirements.isSetSupported(name, minimum);

/** Works on the workbook as soon as no cell is being edited. */
function inWorkbook<Result>(
  work: (context: Excel.RequestContext) => Promise<Result>
): Promise<Result> {
  return Excel.run({ delayForCellEdit: true }, work);
}

/** Notes in the workbook the version of the add-in, when a button has changed the workbook. */
function noteVersion({ workbook }: Excel.RequestContext): void {
  if (supports(SETTINGS)) workbook.settings.add(VERSION_SETTING, version);
}

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
  cell.load(["address", "formulas", "values", "rowIndex"]);
  cell.worksheet.load("name");
  const parent = supports(SPILL_PARENTS) ? cell.getSpillParentOrNullObject() : undefined;
  parent?.load(["formulas", "rowIndex", "isNullObject"]);
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
  };
}

async function freeName(context: Excel.RequestContext, wanted: string): Promise<string> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  const taken = new Set(worksheets.items.map(({ name }) => name.toLowerCase()));
  const names = [
    wanted,
    ...Array.from(
      { length: MOST_SHEETS_OF_A_NAME },
      (_n, index) => `${wanted} ${String(index + 2)}`
    ),
  ];
  const free = names.find((name) => !taken.has(name.toLowerCase()));
  if (free === undefined)
    throw new NotDone(`There are too many sheets named ${wanted}. Delete or rename some.`);
  return free;
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
    sheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = characters * 6;
  const headings = sheet.getRangeByIndexes(headingRow - 1, 0, 1, Math.max(width, 1));
  headings.format.font.bold = true;
  headings.format.wrapText = true;
  sheet.freezePanes.freezeRows(headingRow);
  sheet.activate();
}

/** Takes away a sheet that could not be written whole. */
async function removeSheet(context: Excel.RequestContext, name: string): Promise<void> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  await context.sync();
  if (sheet.isNullObject) return;
  sheet.delete();
  await context.sync();
}

/** The workbook that is open in Excel. */
export const excelWorkbook: WorkbookHost = {
  selectedCell: () => inWorkbook(readSelected),

  putFormula: (formula) =>
    inWorkbook(async (context) => {
      const { address, isEmpty } = await readSelected(context);
      if (!isEmpty) throw new NotDone(`Cell ${address} is not empty. Select an empty cell.`);
      context.workbook.getActiveCell().formulas = [[formula]];
      noteVersion(context);
      await context.sync();
      return address;
    }),

  addSheet: (wanted) =>
    inWorkbook(async (context) => {
      const name = await freeName(context, wanted.name);
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

  lastVersion: () =>
    inWorkbook(async (context) => {
      if (!supports(SETTINGS)) return undefined;
      const setting = context.workbook.settings.getItemOrNullObject(VERSION_SETTING);
      setting.load("value");
      await context.sync();
      return setting.isNullObject ? undefined : String(setting.value);
    }),
};
