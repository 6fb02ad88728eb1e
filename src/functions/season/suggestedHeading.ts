import { cellValue, isBlankOrZero, type CellValue } from "../cells/cellValue";
import { ErrorCell } from "../cells/hostError";
import { InputError } from "../cells/inputError";
import { readArgument } from "../arguments/argumentKind";
import type { ClientListRow } from "../arguments/clientList";
import type { ClientListField } from "../arguments/clientListHeadings";
import { cushion, target } from "../arguments/percent";

/** What the cells of a column say in a heading, each once; cells that cannot be read say nothing here. */
function said(
  clients: readonly ClientListRow[],
  field: ClientListField,
  words: (cell: CellValue) => string | undefined
): readonly string[] {
  const found = clients.map(({ cell }) => {
    try {
      const value = cellValue(cell(field));
      return isBlankOrZero(value) ? undefined : words(value);
    } catch (thrown) {
      if (thrown instanceof InputError || thrown instanceof ErrorCell) return undefined;
      throw thrown;
    }
  });
  return [...new Set(found.filter((one) => one !== undefined))];
}

function cushionWords(cell: CellValue): string | undefined {
  const amount = readArgument(cushion, "cushion", cell);
  if (amount === undefined || amount.isZero()) return undefined;
  return amount.lessThan(1)
    ? `with ${amount.times(100).toString()}% cushion`
    : `with $${amount.toNumber().toLocaleString("en-US")} cushion`;
}

function targetWords(cell: CellValue): string | undefined {
  const aim = readArgument(target, "target", cell);
  if (aim === "full") return undefined;
  return aim === "reasonable cause"
    ? "for the 90% test"
    : `for ${aim.times(100).toString()}% of total tax`;
}

const several = (words: readonly string[], instead: string): readonly string[] =>
  words.length > 1 ? [instead] : words;

/**
 * The heading over the suggested payments of a list. It says why the payments may differ from the balance due.
 *
 * @param heading - The heading without a reason.
 * @param clients - The clients of the list.
 *
 * @example
 * // every client has a cushion of 5% //=> "Suggested payment (with 5% cushion)"
 */
export function suggestedHeading(heading: string, clients: readonly ClientListRow[]): string {
  const why = [
    ...several(said(clients, "target", targetWords), "by target"),
    ...several(said(clients, "cushion", cushionWords), "with cushion"),
  ];
  return why.length === 0 ? heading : `${heading} (${why.join(", ")})`;
}
