import type { AnswerLook } from "./answerLook";

/** A table of the workbook. */
export interface TablePlace {
  readonly name: string;
  readonly sheet: string;
  readonly headings: readonly string[];
  /** The row of the headings, counted from 1. */
  readonly headingRow: number;
  /** The first column, counted from 1. */
  readonly firstColumn: number;
  /** Rows below the headings. */
  readonly rows: number;
}

/** A cell that the user has selected. */
export interface SelectedCell {
  readonly sheet: string;
  /** Such as B7. */
  readonly address: string;
  /** Empty if the cell has no formula. */
  readonly formula: string;
  readonly isEmpty: boolean;
  /** Rows from the cell whose formula fills this one down to this cell; 0 for its own formula. */
  readonly rowsBelow: number;
  /** The tables of the workbook, if the formula refers to table columns. */
  readonly tables?: readonly TablePlace[];
}

/** A sheet to be added: its cells from A1 on, and their look. */
export interface NewSheet {
  readonly name: string;
  /** Values and formulas, row by row; a formula begins with an equals sign. */
  readonly cells: readonly (readonly (string | number)[])[];
  /** Width of each column in characters. */
  readonly widths: readonly number[];
  /** Number format of each column below its heading; empty for none. */
  readonly formats: readonly string[];
  /** The values to choose from, by column; empty if any value is allowed. */
  readonly choices: readonly (readonly string[])[];
  /** The row of the headings, counted from 1. */
  readonly headingRow: number;
  readonly isTable: boolean;
}

/** Where a formula was inserted. */
export interface Inserted {
  /** Such as B7. */
  readonly address: string;
  /** `false` if the workbook does not allow to change the width of a column. */
  readonly isWideEnough: boolean;
}

/** Says in one sentence why the workbook was not changed. */
export class NotDone extends Error {
  override readonly name = "NotDone";
}

/** What the guide can do to a workbook: read the selected cell, fill an empty one, add a sheet, recalculate. It never overwrites a value. */
export interface WorkbookHost {
  selectedCell(): Promise<SelectedCell>;
  /**
   * @param formula - The formula for the selected cell.
   * @param look - The shape and the look of its answer, for which columns are widened and never narrowed.
   * @throws NotDone when the selected cell, or a cell that the answer fills, is not empty.
   */
  putFormula(formula: string, look: AnswerLook): Promise<Inserted>;
  /** @returns The name of the new sheet: a number is added if the name is already in use. */
  addSheet(sheet: NewSheet): Promise<string>;
  /**
   * Enters again the formulas that were calculated before the add-in was loaded, and calculates the whole workbook.
   *
   * @returns How many formulas were entered again.
   */
  recalculate?(): Promise<number>;
  /** Calculates formulas on a sheet of their own, from A1 to the right, and removes it. Returns what their cells show. */
  calculateApart?(formulas: readonly string[]): Promise<readonly unknown[]>;
  /** The version of the add-in that last changed or calculated the workbook here; `undefined` if none did. */
  lastVersion?(): Promise<string | undefined>;
}
