import type { AnswerLook } from "../answers/answerLook";
import type { NewSheet } from "./newSheet";
import type { SheetTop } from "./sheetTop";

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
  /** Columns from that cell to the right to this one; 0 if not given. */
  readonly columnsRight?: number;
  /** The tables of the workbook, if the formula refers to table columns. */
  readonly tables?: readonly TablePlace[];
}

/** Where a formula was inserted. */
export interface Inserted {
  /** Such as B7. */
  readonly address: string;
  /** `false` if the workbook does not allow to change the width of a column. */
  readonly isWideEnough: boolean;
}

/** A list of clients on a sheet: the table that the user has selected, or the filled cells around the selected one. */
export interface SelectedList {
  readonly sheet: string;
  /** The name of the table; `undefined` for plain cells. */
  readonly table?: string;
  /** The row of the headings, counted from 1. */
  readonly headingRow: number;
  /** The first column, counted from 1. */
  readonly firstColumn: number;
  readonly headings: readonly unknown[];
  /** The cells below the headings as Excel passes them to a function: a date is a number, an error is its text such as #N/A. */
  readonly rows: readonly (readonly unknown[])[];
  /** The formulas of the same cells; empty text for a cell without one. */
  readonly formulas: readonly (readonly string[])[];
  /** The index in `rows` of the selected cell; `undefined` if the headings are selected. */
  readonly selectedRow: number | undefined;
}

/** A column that a formula fills beside or in a list. */
export interface FormulaColumn {
  readonly heading: string;
  /** The formula of each row of the list, with its equals sign and A1 references; empty text for a row that gets none. */
  readonly formulas: readonly string[];
  /** The number format; empty for none. */
  readonly format: string;
  /** In characters. */
  readonly width: number;
}

/** What was written beside a list. */
export interface FilledColumns {
  /** The cells that were written, such as H1:K12. */
  readonly address: string;
  /** How many columns were there before, from this tool, and got new formulas. */
  readonly updated: number;
  /** How many steps of Undo take the change back; `undefined` if the host does not tell. */
  readonly undoSteps: number | undefined;
}

/** Says in one sentence why the workbook was not changed. */
export class NotDone extends Error {
  override readonly name = "NotDone";
}

/** What the guide can do to a workbook. It never overwrites a value. */
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
  /**
   * The list around the selected cell.
   *
   * @throws NotDone when there is none: an empty cell, a pivot table, merged headings, too many rows.
   */
  selectedList?(): Promise<SelectedList>;
  /**
   * Tells whenever another cell is selected or a cell of the workbook changes, at most a few times a second.
   * @param moved - Called without arguments.
   * @returns Ends it.
   */
  followSelection?(moved: () => void): () => void;
  /**
   * Enters a value in one cell, if the cell still has the content that was read before.
   *
   * @param cell - Sheet and address, such as B7.
   * @param value - A number (a date is a worksheet date) or a text.
   * @param format - The number format, for a cell that has none; empty for none.
   * @throws NotDone when the cell has another content, or the sheet is protected.
   */
  enterValue?(
    cell: { readonly sheet: string; readonly address: string; readonly was: unknown },
    value: string | number,
    format: string
  ): Promise<void>;
  /**
   * Writes columns of formulas: in a table as new columns of it, elsewhere beside the list. A column of the same heading that this tool
   * wrote before gets the new formulas. Nothing else is overwritten.
   *
   * @throws NotDone when a cell that would be written is not empty.
   */
  fillColumns?(list: SelectedList, columns: readonly FormulaColumn[]): Promise<FilledColumns>;
  /** The first cells of each sheet that is not hidden. */
  sheetTops?(): Promise<readonly SheetTop[]>;
  /** Selects a cell and shows its sheet. */
  goTo?(cell: { readonly sheet: string; readonly address: string }): Promise<void>;
  /**
   * Marks cells that cannot be read, so that they are seen, and takes the mark from those marked before.
   *
   * @param sheet - The name of the sheet.
   * @param addresses - Addresses on the sheet, such as B7.
   */
  markCells?(sheet: string, addresses: readonly string[]): Promise<void>;
  /** Calculates formulas on a sheet of their own, from A1 to the right, and removes it. Returns what their cells show. */
  calculateApart?(formulas: readonly string[]): Promise<readonly unknown[]>;
  /** The version of the add-in that last changed or calculated the workbook here; `undefined` if none did. */
  lastVersion?(): Promise<string | undefined>;
}
