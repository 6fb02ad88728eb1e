import { isRows } from "./argumentMarshalling";
import type { Argument, CellValue } from "./cellValues";
import type { FunctionMetadata } from "./functionMetadata";

function cellAt(rows: readonly (readonly CellValue[])[], row: number, column: number): CellValue {
  const line = rows.length === 1 ? rows[0] : rows[row];
  if (line === undefined) return { error: "#N/A" };
  const cell = line.length === 1 ? line[0] : line[column];
  return cell === undefined ? { error: "#N/A" } : cell;
}

/**
 * Splits a call with rows of cells, where the function declares a single value, into one call per cell.
 *
 * @param metadata - What the function declares.
 * @param given - The arguments; a single row or column repeats, as in Excel.
 * @returns The arguments of each call by row and column; undefined where one call is enough.
 */
export function liftOverCells(
  metadata: FunctionMetadata,
  given: readonly Argument[]
): Argument[][][] | undefined {
  const lifts = given.map((argument, index) => {
    const parameter = metadata.parameters[Math.min(index, metadata.parameters.length - 1)];
    if (parameter?.dimensionality === "matrix" || !isRows(argument)) return undefined;
    return argument;
  });
  const blocks = lifts.filter((block) => block !== undefined);
  const height = Math.max(1, ...blocks.map((block) => block.length));
  const width = Math.max(1, ...blocks.map((block) => block[0]?.length ?? 1));
  if (height === 1 && width === 1) return undefined;
  return Array.from({ length: height }, (_row, row) =>
    Array.from({ length: width }, (_column, column) =>
      given.map((argument, index) => {
        const block = lifts[index];
        return block === undefined ? argument : cellAt(block, row, column);
      })
    )
  );
}
