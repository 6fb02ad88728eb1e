import { cellValue, isBlank, shown } from "../cells/cellValue";
import { ErrorCell } from "../cells/hostError";
import { InputError } from "../cells/inputError";
import { optional, readArgument } from "../arguments/argumentKind";
import type { HeadingReading } from "../arguments/readHeadings";
import { dollars } from "../arguments/dollars";
import { clientPlan, type RosterClient } from "./rosterClient";

/** A cell of a client's row that cannot be read. */
export interface UnreadableCell {
  readonly reading: HeadingReading;
  /** What the cell contains in quotes, or the code of its error. */
  readonly content: string;
  /** What is wrong, and what is accepted, without the argument; empty for a cell with an error. */
  readonly sentence: string;
}

/** What a cell contains, or the code of its error. */
function contentOf(cell: unknown): string {
  try {
    const value = cellValue(cell);
    return isBlank(value) ? "" : shown(value);
  } catch (thrown) {
    if (thrown instanceof ErrorCell) return thrown.code;
    throw thrown;
  }
}

/** The sentence of an argument that cannot be read; `undefined` if it can be. */
function sentenceOf(read: () => unknown): string | undefined {
  try {
    read();
    return undefined;
  } catch (thrown) {
    if (thrown instanceof InputError) return thrown.message.slice(thrown.argument.length + 2);
    if (thrown instanceof ErrorCell) return "";
    throw thrown;
  }
}

/**
 * The cells of a client's row that cannot be read. A blank cell is none.
 *
 * @param client - The client.
 * @param reading - How the headings are read.
 * @param row - The cells of the row.
 */
export function unreadableInRow(
  { given }: RosterClient,
  reading: readonly HeadingReading[],
  row: (index: number) => unknown
): readonly UnreadableCell[] {
  return reading.flatMap((one) => {
    const { field, isPart, index } = one;
    const content = contentOf(row(index));
    if (field === undefined || !(field in clientPlan) || content === "") return [];
    const sentence = sentenceOf(() =>
      isPart
        ? readArgument(optional(dollars), "payments", row(index))
        : given[field as keyof typeof given]
    );
    return sentence === undefined ? [] : [{ reading: one, content, sentence }];
  });
}

/** The cells that {@link unreadableInRow} finds, in one text such as `State: "Texass"; W/H: "n/a"`; empty if there is none. */
export function unreadableCells(
  client: RosterClient,
  reading: readonly HeadingReading[],
  row: (index: number) => unknown
): string {
  return unreadableInRow(client, reading, row)
    .map(({ reading: { heading }, content }) => `${heading.trim()}: ${content}`)
    .join("; ");
}
