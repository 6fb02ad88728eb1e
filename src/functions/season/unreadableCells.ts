import { cellValue, isBlank, shown } from "../cells/cellValue";
import { ErrorCell } from "../cells/hostError";
import { InputError } from "../cells/inputError";
import { optional, readArgument } from "../arguments/argumentKind";
import type { HeadingReading } from "../arguments/readHeadings";
import { dollars } from "../arguments/dollars";
import { clientPlan, type RosterClient } from "./rosterClient";

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

function isUnreadable(read: () => unknown): boolean {
  try {
    read();
    return false;
  } catch (thrown) {
    if (thrown instanceof InputError || thrown instanceof ErrorCell) return true;
    throw thrown;
  }
}

/**
 * The cells of a client's row that cannot be read, by the headings of the list.
 *
 * @param client - The client.
 * @param reading - How the headings are read.
 * @param row - The cells of the row.
 * @returns Such as `State: "Texass"; W/H: "n/a"`; empty if every cell can be read.
 */
export function unreadableCells(
  { given }: RosterClient,
  reading: readonly HeadingReading[],
  row: (index: number) => unknown
): string {
  return reading
    .filter(({ field }) => field !== undefined && field in clientPlan)
    .filter(({ field, isPart, index }) =>
      isUnreadable(() =>
        isPart
          ? readArgument(optional(dollars), "payments", row(index))
          : given[field as keyof typeof given]
      )
    )
    .map(({ heading, index }) => [heading.trim(), contentOf(row(index))] as const)
    .filter(([, content]) => content !== "")
    .map(([heading, content]) => `${heading}: ${content}`)
    .join("; ");
}
