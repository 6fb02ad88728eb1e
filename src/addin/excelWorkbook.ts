import { NotDone, type NewSheet, type SelectedCell, type WorkbookHost } from "./workbookHost";

const SPILL_PARENTS = ["ExcelApi", "1.12"] as const;
const MOST_SHEETS_OF_A_NAME = 99;

function bareAddress(address: string): string {
  return address.slice(address.lastIndexOf("!") + 1).replaceAll("$", "");
}

async function readSelected(context: Excel.RequestContext): Promise<SelectedCell> {
  const cell = context.workbook.getActiveCell();
  cell.load(["address", "formulas", "values", "rowIndex"]);
  cell.worksheet.load("name");
  const knowsSpills = Office.context.requirements.isSetSupported(...SPILL_PARENTS);
  const parent = knowsSpills ? cell.getSpillParentOrNullObject() : undefined;
  parent?.load(["formulas", "rowIndex", "isNullObject"]);
  await context.sync();
  const filledBy = parent && !parent.isNullObject ? parent : cell;
  const formula = String((filledBy.formulas as (string | number | boolean)[][])[0]?.[0] ?? "");
  return {
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
  for (const [row, line] of cells.entries()) {
    if (line.length === 0) continue;
    sheet.getRangeByIndexes(row, 0, 1, line.length).formulas = [[...line]];
  }
  const width = cells[headingRow - 1]?.length ?? 0;
  const below = cells.length - headingRow;
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
  if (isTable) sheet.tables.add(sheet.getRangeByIndexes(headingRow - 1, 0, below + 1, width), true);
  sheet.freezePanes.freezeRows(headingRow);
  sheet.activate();
}

/** The workbook that is open in Excel. */
export const excelWorkbook: WorkbookHost = {
  selectedCell: () => Excel.run(readSelected),

  putFormula: (formula) =>
    Excel.run(async (context) => {
      const { address, isEmpty } = await readSelected(context);
      if (!isEmpty) throw new NotDone(`Cell ${address} is not empty. Select an empty cell.`);
      context.workbook.getActiveCell().formulas = [[formula]];
      await context.sync();
      return address;
    }),

  addSheet: (wanted) =>
    Excel.run(async (context) => {
      const name = await freeName(context, wanted.name);
      fill(context.workbook.worksheets.add(name), wanted);
      await context.sync();
      return name;
    }),
};
