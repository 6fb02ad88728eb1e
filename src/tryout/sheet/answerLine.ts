import { cellAddress } from "../workbook/cellAddress";
import type { Grid } from "./grid";
import type { GridAnswers } from "./gridAnswers";

/**
 * Keeps a line of the page at what the selected cell holds: the sentence of an error, which the grid does not show.
 *
 * @param grid - The grid.
 * @param answers - What our functions answered.
 * @param line - The line.
 */
export function followSelection(grid: Grid, answers: GridAnswers, line: HTMLElement): void {
  const show = (): void => {
    const book = grid.getActiveWorkbook();
    const range = book?.getActiveRange();
    if (!book || !range) return;
    const row = range.getRow();
    const column = range.getColumn();
    const answer = answers.at(book.getActiveSheet().getSheetId(), row, column);
    const said = answer?.error === undefined ? "" : `${answer.error} ${answer.message ?? ""}`;
    const text = said === "" ? "" : `${cellAddress(row + 1, column + 1)}: ${said.trim()}`;
    if (line.textContent !== text) line.textContent = text;
    line.classList.toggle("error", text !== "");
  };
  grid.addEvent(grid.Event.SelectionChanged, show);
  grid.getFormula().calculationEnd(() => setTimeout(show, 0));
}
