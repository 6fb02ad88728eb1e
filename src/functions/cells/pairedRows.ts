import { rowsOf } from "./columns";
import { InputError } from "./inputError";

/** A row of two cells. */
export interface PairedRow {
  /** The argument and the row, as an error message names them. */
  readonly place: string;
  readonly first: unknown;
  readonly second: unknown;
}

/**
 * The rows of a range with two columns, such as dates and amounts, or labels and amounts.
 *
 * @param name - The argument, for the error message.
 * @param argument - The range as the host passed it.
 * @param columns - What the two columns contain, for the error message.
 * @returns Every row, including blank ones.
 * @throws InputError where a row does not have two cells.
 */
export function pairedRows(name: string, argument: unknown, columns: string): readonly PairedRow[] {
  return rowsOf(argument).map((cells, index) => {
    if (cells.length !== 2) {
      throw new InputError(
        name,
        `The range has ${String(cells.length)} ${cells.length === 1 ? "column" : "columns"}. Select two columns, ${columns}.`
      );
    }
    return { place: `${name} row ${String(index + 1)}`, first: cells[0], second: cells[1] };
  });
}
