import type { TableNode } from "./formulaTree";
import type { Area, CellPosition, TablePlace } from "./referenceWorld";

/** Whether a cell is in a table, its header and total row included. */
function isInside({ sheet, top, bottom, left, columns }: TablePlace, place: CellPosition): boolean {
  const isRow = place.row >= top && place.row <= bottom;
  return (
    place.sheet === sheet && isRow && place.column >= left && place.column < left + columns.length
  );
}

/** The rows of a table that a special item such as #Headers means; the data rows without one. */
function rowsOf(table: TablePlace, special: string, row: number): [top: number, bottom: number] {
  const { top, bottom, hasHeader, hasTotals } = table;
  switch (special) {
    case "#All":
      return [top, bottom];
    case "#Headers":
      return [top, hasHeader ? top : top - 1];
    case "#Totals":
      return [hasTotals ? bottom : bottom + 1, bottom];
    case "#This Row":
      return [row, row];
    default:
      return [top + Number(hasHeader), bottom - Number(hasTotals)];
  }
}

/** The block of cells that a reference to a table means in a cell; undefined when there is none. */
export function tableArea(
  { tableName, columns, specials }: TableNode,
  place: CellPosition,
  tables: readonly TablePlace[]
): Area | undefined {
  const table = tables.find((entry) =>
    tableName === "" ? isInside(entry, place) : entry.name.toLowerCase() === tableName.toLowerCase()
  );
  if (table === undefined) return undefined;
  const named = columns.map((column) =>
    // The library removes spaces around a name.
    table.columns.findIndex((name) => name.trim().toLowerCase() === column.trim().toLowerCase())
  );
  const rows = (specials.length === 0 ? [""] : specials).map((special) =>
    rowsOf(table, special, place.row)
  );
  const [top, bottom] = [
    Math.min(...rows.map(([first]) => first)),
    Math.max(...rows.map(([, last]) => last)),
  ];
  if (named.includes(-1) || top > bottom) return undefined;
  const left = table.left + (named.length > 0 ? Math.min(...named) : 0);
  const right = table.left + (named.length > 0 ? Math.max(...named) : table.columns.length - 1);
  return { sheet: table.sheet, top, left, bottom, right };
}
