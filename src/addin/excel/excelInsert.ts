import { formattedNumbers } from "../../functions/cells/numberFormats";
import { readAddress } from "../../host/cellAddress";
import type { AnswerLook } from "../answers/answerLook";
import { excelErrorSentence } from "./excelErrors";
import { noteVersion } from "./excelRequest";
import { NotDone, type Inserted, type SelectedCell } from "../workbook/workbookHost";

/** Points for each character of a column's width, in Excel's usual font. */
export const POINTS_PER_CHARACTER = 6;
/** Characters beside the longest number of a column, without which Excel shows ########. */
const SPARE_CHARACTERS = 2;
/** The number format of a cell that has none of its own. */
const NO_FORMAT = "General";

/**
 * Inserts a formula in the selected cell, and widens the columns that its answer fills. Where the host takes no number formats from a
 * function, the cells get them here, if they have none of their own.
 *
 * @param context - The request.
 * @param selected - The selected cell.
 * @param formula - The formula.
 * @param look - The shape and the look of its answer.
 * @throws NotDone when the cell, or a cell that the answer fills, is not empty.
 */
export async function insertFormula(
  context: Excel.RequestContext,
  selected: SelectedCell,
  formula: string,
  look: AnswerLook
): Promise<Inserted> {
  const { address, isEmpty } = selected;
  if (!isEmpty) throw new NotDone(`Cell ${address} is not empty. Select an empty cell.`);
  const cell = context.workbook.getActiveCell();
  const { top = 1, left = 1 } = readAddress(address) ?? {};
  const [row, column] = [top - 1, left - 1];
  const { widths, formats } = look;
  const area = cell.worksheet.getRangeByIndexes(row, column, formats.length, widths.length);
  area.load(["values", "numberFormat"]);
  const columns = widths.map((_width, index) => {
    const { format } = cell.worksheet.getRangeByIndexes(row, column + index, 1, 1);
    format.load("columnWidth");
    return format;
  });
  await context.sync();
  if ((area.values as unknown[][]).some((line) => line.some((value) => value !== "")))
    throw new NotDone(
      `The answer fills ${String(formats.length)} rows and ${String(widths.length)} columns from ${address}, and these cells are not all empty. Select a cell with more room.`
    );
  cell.formulas = [[formula]];
  noteVersion(context);
  await context.sync();
  for (const [index, width] of widths.entries()) {
    const format = columns[index];
    const wanted = (width + SPARE_CHARACTERS) * POINTS_PER_CHARACTER;
    if (format && format.columnWidth < wanted) format.columnWidth = wanted;
  }
  if (formattedNumbers() === "plain")
    area.numberFormat = (area.numberFormat as string[][]).map((line, r) =>
      line.map((present, c) => (present === NO_FORMAT ? (formats[r]?.[c] ?? present) : present))
    );
  try {
    await context.sync();
  } catch (thrown) {
    // A protected sheet can allow a formula and forbid a width.
    if (excelErrorSentence(thrown) === undefined) throw thrown;
    return { address, isWideEnough: false };
  }
  return { address, isWideEnough: true };
}
