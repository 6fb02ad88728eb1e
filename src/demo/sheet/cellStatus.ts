import { cellAddress } from "../../host/cellAddress";
import type { StandInHost } from "../../host/standInHost";
import { errorSentence, isErrorCode } from "./errorSentence";
import type { Grid } from "./grid";
import type { GridAnswers, GridPlace } from "./gridAnswers";
import { cellAt, openWorkbook, selectedPlace } from "./gridCells";
import { unknownFunctionSentence } from "./unknownFunction";

/** The text for a cell, and whether it is an error. */
export interface CellStatus {
  readonly text: string;
  readonly isError: boolean;
}

const address = ({ row, column }: GridPlace): string => cellAddress(row + 1, column + 1);

/** The first cell that is not empty where a result would spill. */
function cellInTheWay(grid: Grid, place: GridPlace, answers: GridAnswers): string | undefined {
  const sheet = openWorkbook(grid).getWorkbook().getSheetBySheetId(place.sheetId);
  const { rows = [] } = answers.callsOf(place).at(-1) ?? {};
  for (const [down, cells] of rows.entries()) {
    for (const across of cells.keys()) {
      if (down === 0 && across === 0) continue;
      const [row, column] = [place.row + down, place.column + across];
      const value = sheet?.getCellRaw(row, column)?.v ?? null;
      if (value !== null && value !== "") return cellAddress(row + 1, column + 1);
    }
  }
  return undefined;
}

/** The text for a cell: the message of its error, or the formula in another cell that fills it. */
function cellStatus(
  grid: Grid,
  place: GridPlace,
  answers: GridAnswers,
  host: StandInHost
): CellStatus {
  const { value, filledBy } = cellAt(grid, place);
  if (!isErrorCode(value)) {
    const isFilled = filledBy && (filledBy.row !== place.row || filledBy.column !== place.column);
    const text = isFilled
      ? `${address(place)} is filled by the formula in ${address(filledBy)}.`
      : "";
    return { text, isError: false };
  }
  const from = filledBy ?? place;
  const calls = answers.callsOf(from);
  const unknown =
    value === "#NAME?" ? unknownFunctionSentence(cellAt(grid, from).formula, host) : undefined;
  const sentence =
    unknown ?? errorSentence(value, calls, place.row - from.row, place.column - from.column);
  const inTheWay = value === "#SPILL!" ? cellInTheWay(grid, from, answers) : undefined;
  const more = inTheWay === undefined ? "" : ` ${inTheWay} is not empty.`;
  return { text: `${address(place)} ${value} ${sentence}${more}`, isError: true };
}

/**
 * Shows the text for the selected cell in a line under the grid, and the message of an error also at the top of the pane.
 *
 * @param grid - The grid.
 * @param answers - The results of our functions.
 * @param host - The host of our functions.
 * @param lines - The two lines.
 */
export function showCellStatus(
  grid: Grid,
  answers: GridAnswers,
  host: StandInHost,
  lines: { readonly underGrid: HTMLElement; readonly inPane: HTMLElement }
): void {
  const { underGrid, inPane } = lines;
  const show = (): void => {
    if (!grid.api.getActiveWorkbook()) return;
    const { text, isError } = cellStatus(grid, selectedPlace(grid), answers, host);
    if (underGrid.textContent !== text) underGrid.textContent = text;
    underGrid.classList.toggle("error", isError);
    inPane.textContent = isError ? text : "";
    inPane.hidden = !isError;
  };
  const { SelectionChanged, SelectionMoveEnd, ActiveSheetChanged } = grid.api.Event;
  // The grid does not always tell of the change of a selection whose move it ends.
  for (const event of [SelectionChanged, SelectionMoveEnd, ActiveSheetChanged])
    grid.api.addEvent(event, show);
  grid.api.getFormula().calculationStart(() => {
    answers.begin();
  });
  grid.api.getFormula().calculationResultApplied(show);
}
