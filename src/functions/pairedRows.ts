import { InputError } from "../inputError";

/** A row of two cells. */
export interface PairedRow {
  /** The row, as a message names it. */
  readonly place: string;
  readonly first: unknown;
  readonly second: unknown;
}

/**
 * The rows of a block two columns wide, such as days and amounts, or labels and amounts.
 *
 * @param name - The argument, for the message.
 * @param argument - The block as the host passed it.
 * @param columns - What the two columns hold, for the message.
 * @returns Every row, empty ones too.
 * @throws InputError where a row has not two cells.
 */
export function pairedRows(name: string, argument: unknown, columns: string): readonly PairedRow[] {
  const rows = Array.isArray(argument) ? (argument as readonly unknown[]) : [argument];
  return rows.map((row, index) => {
    const cells = Array.isArray(row) ? (row as readonly unknown[]) : [row];
    if (cells.length !== 2) {
      throw new InputError(
        name,
        `must be two columns wide, ${columns}; this is ${String(cells.length)}`
      );
    }
    return { place: `${name} row ${String(index + 1)}`, first: cells[0], second: cells[1] };
  });
}
