/** No sentence shows a date as a number: the preparer reads 4/15/2026, never 46127 (words of the project, no law). */
import fc from "fast-check";
import { expect, it } from "vitest";
import { catalog } from "../../src/functions/catalog";
import { argumentsOf, LIST_COLUMNS } from "./arbitraries";
import { Untouchable } from "./hostileCells";
import { revealed } from "./oddCells";

const CALLS = 300;
/** Five digits that are no part of dollars, of another number, or of an address. */
const FIVE_DIGITS = /(?<![\d$.,/-]|[A-Z]{2} )\d{5}(?![\d,/-])/g;

/** The worksheet dates among some values, as five digits. */
function serialsIn(values: readonly unknown[]): string[] {
  return values
    .filter((value) => typeof value === "number" && value >= 10_000 && value < 100_000)
    .map((value) => String(Math.floor(value as number)));
}

/** The dates entered in an argument. */
function datesOf(kind: string, given: unknown): string[] {
  const rows = (Array.isArray(given) ? given : [[given]]).filter(Array.isArray) as unknown[][];
  switch (kind) {
    case "date":
    case "date-range":
    case "tax-year":
      return serialsIn([given, ...rows.flat()]);
    case "payment-rows":
      return serialsIn(rows.map(([date]) => date));
    case "client-list":
    case "list-rows":
      return LIST_COLUMNS.flatMap((column, index) =>
        datesOf(
          column.kind.id,
          rows.map((row) => [row[index]])
        )
      );
    default:
      return [];
  }
}

/** The texts of an answer, and the sentences of its errors. */
function textsOf(answer: () => unknown): string[] {
  let cells: unknown[];
  try {
    cells = [answer()].flat(2);
  } catch (thrown) {
    cells = [thrown];
  }
  return cells.map((cell) => {
    const text = (cell as { message?: unknown } | null)?.message ?? cell;
    return typeof text === "string" ? text : "";
  });
}

it.each(Object.entries(catalog))("%s writes every date as a date", (_id, definition) => {
  const kinds = Object.values(definition.arguments).map(({ id }) => id);
  let checked = 0;
  fc.assert(
    fc.property(argumentsOf(definition), (drawn) => {
      const given = revealed(drawn) as readonly unknown[];
      let dates: ReadonlySet<string>;
      try {
        dates = new Set(kinds.flatMap((kind, index) => datesOf(kind, given[index])));
      } catch (thrown) {
        if (thrown instanceof Untouchable) return;
        throw thrown;
      }
      if (dates.size === 0) return;
      checked += 1;
      const shown = textsOf(() => definition.answer(given)).flatMap((text) =>
        (text.match(FIVE_DIGITS) ?? []).filter((digits) => dates.has(digits)).map(() => text)
      );
      expect(shown).toEqual([]);
    }),
    { numRuns: CALLS, seed: 4868 }
  );
  if (kinds.includes("date")) expect(checked).toBeGreaterThan(CALLS / 5);
});
