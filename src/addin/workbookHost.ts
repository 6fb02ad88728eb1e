/** A cell that the user has selected. */
export interface SelectedCell {
  readonly sheet: string;
  /** Such as B7. */
  readonly address: string;
  /** Empty where it holds none. */
  readonly formula: string;
  readonly isEmpty: boolean;
  /** Rows below the cell whose formula fills this one, where it is filled by another. */
  readonly rowsBelow: number;
}

/** A sheet to be added: what stands in it, from A1 on, and how it looks. */
export interface NewSheet {
  readonly name: string;
  /** Values and formulas, row by row; a formula begins with an equals sign. */
  readonly cells: readonly (readonly (string | number)[])[];
  /** Width of each column in characters. */
  readonly widths: readonly number[];
  /** Number format of each column below its heading; empty for none. */
  readonly formats: readonly string[];
  /** Words to choose from, by column; empty for any. */
  readonly choices: readonly (readonly string[])[];
  /** The row of the headings, counted from 1; what lies below is a table. */
  readonly headingRow: number;
  readonly isTable: boolean;
}

/** Says in one sentence why the workbook was left as it is. */
export class NotDone extends Error {
  override readonly name = "NotDone";
}

/** What the guide may do to a workbook: read the selected cell, fill an empty one, add a sheet. It never overwrites anything. */
export interface WorkbookHost {
  selectedCell(): Promise<SelectedCell>;
  /** @throws NotDone where the selected cell is not empty, or an answer would not fit. */
  putFormula(formula: string): Promise<string>;
  /** @returns The name the sheet was given: a number is added to one that is taken. */
  addSheet(sheet: NewSheet): Promise<string>;
}
