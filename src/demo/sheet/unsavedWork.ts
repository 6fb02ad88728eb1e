import { CommandType } from "@univerjs/core";
import type { Grid } from "./grid";
import { openWorkbook } from "./gridCells";

/** Changes of a workbook that its file has. Heights that the grid adapts to their text are not the user's change. */
const CHANGE = /^sheet\.mutation\.(?!set-worksheet-row-(auto-height|is-auto-height))/;
const NAME_CHANGE = /^formula\.mutation\.(set|remove)-defined-name/;

/** Knows whether the workbook in the grid has changes that are in no file. */
export class UnsavedWork {
  readonly #grid: Grid;
  #isChanged = false;

  constructor(grid: Grid) {
    this.#grid = grid;
    grid.api.addEvent(grid.api.Event.CommandExecuted, ({ id, type, options }) => {
      if (type !== CommandType.MUTATION || options?.["fromFormula"] === true) return;
      if (CHANGE.test(id) || NAME_CHANGE.test(id)) this.#isChanged = true;
    });
  }

  /** Whether a change, or an entry that is still being typed, would be lost with the workbook. */
  get exists(): boolean {
    return this.#isChanged || openWorkbook(this.#grid).isCellEditing();
  }

  /** Another workbook was opened, or a copy was saved. */
  clear(): void {
    this.#isChanged = false;
  }
}

/**
 * Ends the editing of a cell and keeps what was typed.
 *
 * @param grid - The grid.
 */
export async function finishEntry(grid: Grid): Promise<void> {
  const workbook = openWorkbook(grid);
  if (workbook.isCellEditing()) await workbook.endEditingAsync(true);
}
