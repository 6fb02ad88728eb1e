import type { Area, CellPosition, TablePlace } from "./referenceWorld";

/** A reference to a table in a parsed formula. */
export interface TableReference {
  readonly tableName: string;
  readonly columns: readonly string[];
  readonly specials: readonly string[];
}

/** Whether a cell is in a table, its header and total row included. */
export function isInside(table: TablePlace, place: CellPosition): boolean {
  if (place.sheet !== table.sheet) return false;
  const rows = table.dataRows + (table.hasHeader ? 1 : 0);
  const withinRows = place.row >= table.top && place.row <= table.top + rows;
  const lastColumn = table.left + table.columns.length - 1;
  return withinRows && place.column >= table.left && place.column <= lastColumn;
}

/** The block of cells that a reference to a table means in a cell; undefined when there is none. */
export function tableArea(
  reference: TableReference,
  place: CellPosition,
  tables: readonly TablePlace[]
): Area | undefined {
  const table = tables.find((entry) =>
    reference.tableName === ""
      ? isInside(entry, place)
      : entry.name.toLowerCase() === reference.tableName.toLowerCase()
  );
  if (table === undefined) return undefined;
  const positions = reference.columns
    .map((column) => table.columns.findIndex((name) => name.toLowerCase() === column.toLowerCase()))
    .filter((position) => position >= 0);
  const named = positions.length > 0;
  const left = table.left + (named ? Math.min(...positions) : 0);
  const right = table.left + (named ? Math.max(...positions) : table.columns.length - 1);
  const { sheet } = table;
  if (reference.specials.includes("#This Row")) {
    return { sheet, top: place.row, left, bottom: place.row, right };
  }
  if (reference.specials.length === 1 && reference.specials[0] === "#Headers") return undefined;
  const top = table.top + (table.hasHeader ? 1 : 0);
  // With #All or #Totals the block may reach one row below the data.
  const bottom = top + table.dataRows - (reference.specials.length === 0 ? 1 : 0);
  return { sheet, top, left, bottom, right };
}
