import { mustBeEnteredAgain, typedFormula } from "../workbook/ownFormula";

/** Cells that are read at once: a reply of Excel has a limit of 5 MB. */
const MOST_CELLS_READ = 20_000;

/**
 * Enters again the formulas of a sheet that Excel calculated before it knew the functions.
 *
 * @param context - The request.
 * @param sheet - The sheet.
 * @returns How many formulas were entered again. They are written with the next `sync`.
 */
export async function enterAgain(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet
): Promise<number> {
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load(["rowIndex", "columnIndex", "rowCount", "columnCount"]);
  await context.sync();
  if (used.isNullObject) return 0;
  const rowsAtOnce = Math.max(1, Math.floor(MOST_CELLS_READ / used.columnCount));
  let entered = 0;
  for (let row = 0; row < used.rowCount; row += rowsAtOnce) {
    const rows = Math.min(rowsAtOnce, used.rowCount - row);
    const top = used.rowIndex + row;
    const block = sheet.getRangeByIndexes(top, used.columnIndex, rows, used.columnCount);
    block.load(["formulas", "values"]);
    await context.sync();
    const values = block.values as unknown[][];
    for (const [r, line] of (block.formulas as unknown[][]).entries())
      for (const [c, formula] of line.entries()) {
        if (!mustBeEnteredAgain(formula, values[r]?.[c])) continue;
        block.getCell(r, c).formulas = [[typedFormula(formula)]];
        entered++;
      }
  }
  return entered;
}
