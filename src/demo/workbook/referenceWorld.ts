import type { FormulaNode } from "./formulaTree";

/** A block of cells on one sheet. */
export interface Area {
  readonly sheet: string;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** The place of a cell in the workbook. */
export interface CellPosition {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** What references to a table need to know of it. */
export interface TablePlace {
  readonly name: string;
  readonly sheet: string;
  /** The first row, with the header if there is one. */
  readonly top: number;
  readonly left: number;
  /** The last row, with the totals if there are any. */
  readonly bottom: number;
  readonly columns: readonly string[];
  readonly hasHeader: boolean;
  readonly hasTotals: boolean;
}

/** The sheets, names and tables that references are resolved with. */
export interface ReferenceWorld {
  readonly sheets: readonly string[];
  readonly tables: readonly TablePlace[];
  /** What a name means on a sheet: several formulas for a name of several blocks, none if it cannot be read; undefined for an unknown name. */
  definedName(name: string, sheet: string): readonly FormulaNode[] | undefined;
}

/** The sheets from one to another in the order of the workbook; the sheet of the formula when none is named. */
export function sheetSpan(
  world: ReferenceWorld,
  home: string,
  first?: string,
  last?: string
): string[] {
  if (first === undefined) return [home];
  const position = (name: string) =>
    world.sheets.findIndex((sheet) => sheet.toLowerCase() === name.toLowerCase());
  const start = position(first);
  const end = last === undefined ? start : position(last);
  if (start < 0 || end < 0) return [];
  return world.sheets.slice(Math.min(start, end), Math.max(start, end) + 1);
}
