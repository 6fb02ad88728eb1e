import { isEmptyCell } from "./cellValue";
import { InputError } from "./inputError";

/** An argument of a row function: one cell, a column or a row of cells. */
export interface Column {
  readonly name: string;
  readonly cells: readonly unknown[];
  readonly direction: "down" | "across";
}

/** The rows of a range as the host passes it; one row of one cell for a single value. */
export function rowsOf(argument: unknown): readonly (readonly unknown[])[] {
  const rows = Array.isArray(argument) ? (argument as readonly unknown[]) : [argument];
  return rows.map((row) => (Array.isArray(row) ? (row as readonly unknown[]) : [row]));
}

/**
 * The cells of an argument that is one cell, a column or a row.
 *
 * @param name - The argument, for the error message.
 * @param argument - What the host passed: rows of cells, a single value, or nothing.
 * @returns Its cells, and whether they run down or across.
 * @throws InputError for a range of several rows and columns.
 */
export function columnOf(name: string, argument: unknown): Column {
  if (!Array.isArray(argument)) return { name, cells: [argument ?? null], direction: "down" };
  const rows = rowsOf(argument);
  const width = rows[0]?.length ?? 0;
  if (width <= 1) return { name, cells: rows.map((row) => row[0] ?? null), direction: "down" };
  if (rows.length === 1) return { name, cells: rows[0] ?? [], direction: "across" };
  throw new InputError(
    name,
    `The range has ${String(rows.length)} rows and ${String(width)} columns. Select one cell, one column or one row.`
  );
}

/**
 * The number of rows that columns used together have. Single cells repeat.
 *
 * @throws InputError where the lengths differ.
 */
export function lengthOf(columns: readonly Column[]): number {
  const long = columns.filter(({ cells }) => cells.length > 1);
  const first = long[0];
  const other = long.find(({ cells }) => cells.length !== first?.cells.length);
  if (first && other) {
    throw new InputError(
      other.name,
      `The range has ${String(other.cells.length)} cells, but ${first.name} has ${String(first.cells.length)}. Ranges used together must have the same number of cells.`
    );
  }
  const empty = columns.find(({ cells }) => cells.length === 0);
  if (empty) throw new InputError(empty.name, "The range is empty. Select at least one cell.");
  return first?.cells.length ?? 1;
}

/** Whether a row of a client list is blank. Some builds of Excel send 0 for a blank cell: 0 counts as blank where the tax year is blank too. */
export function isBlankRow(columns: readonly Column[], row: number): boolean {
  const long = columns.filter(({ cells }) => cells.length > 1);
  const zeroIsBlank = long.some(
    ({ name, cells }) => name === "taxYear" && (cells[row] === 0 || isEmptyCell(cells[row]))
  );
  return long.every(({ cells }) => isEmptyCell(cells[row]) || (zeroIsBlank && cells[row] === 0));
}

/**
 * The cell of an argument that takes one cell only.
 *
 * @throws InputError for a range of several cells.
 */
export function singleCell(name: string, argument: unknown): unknown {
  const { cells } = columnOf(name, argument);
  if (cells.length !== 1)
    throw new InputError(name, `The range has ${String(cells.length)} cells. Select one cell.`);
  return cells[0];
}

/**
 * Every cell of a range that is not blank, row by row.
 *
 * @throws InputError when all cells are blank.
 */
export function filledCells(name: string, argument: unknown): readonly unknown[] {
  const cells = [argument].flat(2).filter((cell) => !isEmptyCell(cell));
  if (cells.length === 0)
    throw new InputError(name, "The range is empty. Select at least one cell with a value.");
  return cells;
}

/** Whether all cells of a range are blank. Some builds of Excel send 0 for a blank cell: 0 counts as blank. */
export function isBlankRange(argument: unknown): boolean {
  return rowsOf(argument).every((row) => row.every((cell) => isEmptyCell(cell) || cell === 0));
}
