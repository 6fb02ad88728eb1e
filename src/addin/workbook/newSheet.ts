/** The color of cells that the user fills in. */
export const INPUT_COLOR = "#FFF2CC";

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
  /** Cells that the user fills in, such as B1 or C4:F28: they get a color. */
  readonly inputs?: readonly string[];
  /** Columns from the left that stay in sight. */
  readonly frozenColumns?: number;
  /** How other blocks of cells look. */
  readonly looks?: readonly CellsLook[];
  /** How the sheet is printed, on one page; `undefined` for as the host has it. */
  readonly page?: PageOfSheet;
}

/** How a block of cells looks. */
export interface CellsLook {
  /** Row and column of its first cell, counted from 1. */
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
  /** `undefined` for cells that have only a number format. */
  readonly style?: "title" | "heading" | "total" | "wrapped";
  readonly format?: string;
}

/** The colors of a row of headings: the green of the pane, and white. */
export const HEADING_COLORS = { fill: "#16645A", text: "#FFFFFF" };

/** The page that a sheet is printed on. */
export interface PageOfSheet {
  /** In the middle of the footer. */
  readonly footer: string;
  readonly isLandscape: boolean;
  /** Whether the text of the cells is wrapped in their columns. */
  readonly wrapsText: boolean;
}
