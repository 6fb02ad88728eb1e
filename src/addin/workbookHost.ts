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

/** Says in one sentence why the workbook was not changed. */
export class NotDone extends Error {
  override readonly name = "NotDone";
}

/** What the guide can do to a workbook: read the selected cell, fill an empty one, add a sheet, recalculate. It never overwrites a value. */
export interface WorkbookHost {
  selectedCell(): Promise<SelectedCell>;
  /** @throws NotDone when the selected cell is not empty. */
  putFormula(formula: string): Promise<string>;
  /** @returns The name of the new sheet: a number is added if the name is already in use. */
  addSheet(sheet: NewSheet): Promise<string>;
  /**
   * Enters again the formulas that were calculated before the add-in was loaded, and calculates the whole workbook.
   *
   * @returns How many formulas were entered again.
   */
  recalculate?(): Promise<number>;
  /** The version of the add-in that last changed or calculated the workbook here; `undefined` if none did. */
  lastVersion?(): Promise<string | undefined>;
}
