import { newSheetName, removeSheet } from "./excelRequest";

const NAME = "Extension Season check";
/** How long a formula may take, in steps of so many milliseconds. */
const STEPS = 60;
const STEP = 250;

const isBusy = (value: unknown): boolean => /^#(BUSY|GETTING_DATA)/.test(String(value));

/**
 * Calculates formulas on a sheet of their own, which is removed again.
 *
 * @param context - The request.
 * @param formulas - The formulas, for A1, B1 and so on.
 * @returns What their cells show; `#BUSY!` for one that is not calculated in time.
 */
export async function calculateApart(
  context: Excel.RequestContext,
  formulas: readonly string[]
): Promise<readonly unknown[]> {
  const name = await newSheetName(context, NAME);
  try {
    const cells = context.workbook.worksheets.add(name).getRangeByIndexes(0, 0, 1, formulas.length);
    cells.formulas = [[...formulas]];
    await context.sync();
    let shown: readonly unknown[] = ["#BUSY!"];
    for (let step = 0; step < STEPS && shown.some(isBusy); step++) {
      if (step > 0) await new Promise((resolve) => setTimeout(resolve, STEP));
      cells.load("values");
      await context.sync();
      shown = (cells.values as unknown[][])[0] ?? [];
    }
    return shown;
  } finally {
    // The check itself has failed if the workbook is protected, and then no sheet was added.
    await removeSheet(context, name).catch(() => undefined);
  }
}
