/** A block of cells on one sheet. */
export interface Area {
  readonly sheet: string;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** A cell's place in the workbook. */
export interface CellPosition {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A table as far as references into it need it. */
export interface TablePlace {
  readonly name: string;
  readonly sheet: string;
  readonly top: number;
  readonly left: number;
  readonly columns: readonly string[];
  readonly dataRows: number;
  readonly hasHeader: boolean;
}

/** The workbook's sheets, names and tables, which references are read against. */
export interface ReferenceWorld {
  readonly sheets: readonly string[];
  readonly tables: readonly TablePlace[];
  /** The text a name stands for on a sheet; several texts for a name of several blocks. */
  definedName(name: string, sheet: string): readonly string[] | undefined;
}

/** The sheets from one to another in the workbook's order; the home sheet when none is named. */
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
