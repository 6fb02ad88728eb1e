import { describe, expect, it } from "vitest";
import { calendarTaxYear } from "../../src/calculation/taxYear";
import { readArgument, type ArgumentKind } from "../../src/functions/arguments/argumentKind";
import { catalog } from "../../src/functions/catalog";
import { sentenceOf } from "./arguments/reading";
import { fromCatalog } from "./fromCatalog";

/** What people type where they do not know yet. */
const UNKNOWN = ["n/a", "N/A", "-", "–", "TBD", "?", "unknown"];

const uses = Object.entries(catalog).flatMap(([id, { arguments: list }]) =>
  Object.entries(list).map(([name, kind]) => ({ id, name, kind }))
);
/** These read what applies to the whole list for each client. */
const LISTS = ["ROSTER", "ROSTERROWS"];
const cellUses = uses.filter(({ id, kind }) => kind.takes === "cell" && !LISTS.includes(id));

/** A range of each kind with one cell that is not known, and the place that the sentence names. */
const RANGES: Readonly<
  Record<string, (unknown: string) => readonly (readonly [unknown, string])[]>
> = {
  "item-rows": (cell) => [
    [
      [
        ["wages", 1],
        ["wages", cell],
      ],
      " row 2",
    ],
    [[[cell, 1]], " row 1"],
  ],
  "payment-item-rows": (cell) => [
    [[["withholding", cell]], " row 1"],
    [
      [
        ["wages", 1],
        [cell, 1],
      ],
      " row 2",
    ],
  ],
  "change-rows": (cell) => [
    [[["wages", cell]], " row 1"],
    [[[cell, 1]], " row 1"],
  ],
  "payment-rows": (cell) => [
    [[["4/15/2026", cell]], " row 1"],
    [
      [
        ["4/15/2026", 1],
        [cell, 1],
      ],
      " row 2",
    ],
  ],
  "penalty-years": (cell) => [
    [[[cell]], " row 1"],
    [[[2023, cell]], " row 1"],
  ],
  "late-years": (cell) => [[[[2023], [cell]], " row 2"]],
  "dollar-range": (cell) => [
    [[[5], [cell]], " row 2"],
    [[[cell]], ""],
  ],
  "date-range": (cell) => [
    [[["4/15/2026"], [cell]], " row 2"],
    [[[cell]], ""],
  ],
  "answer-columns": (cell) => [[[["Client"], [cell]], ""]],
  "period-rows": (cell) => [
    [
      [
        ["", "Mar", "May", "Aug", "Dec"],
        ["AGI", 1, cell, 3, 4],
      ],
      " row 2, column 3",
    ],
    [
      [
        ["", "Mar", "May", "Aug", "Dec"],
        ["AGI", 1, 2, 3, 4],
        [cell, 1, 2, 3, 4],
      ],
      " row 3",
    ],
    [
      [
        ["", "Mar", cell, "Aug", "Dec"],
        ["AGI", 1, 2, 3, 4],
      ],
      " row 1, column 3",
    ],
  ],
};
/** A client list has its own column for cells that cannot be read, and any text can be a heading of the user's own. */
const OTHER_RANGES = ["client-list", "list-headings", "list-rows", "own-headings"];

const refusal = (kind: ArgumentKind<unknown>, name: string, value: unknown): string =>
  sentenceOf(() => readArgument(kind, name, value, { taxYear: calendarTaxYear(2025) }));

describe("a cell that says that something is not known", () => {
  it.each(cellUses)("is refused by $id, $name, and quoted", ({ name, kind }) => {
    for (const cell of UNKNOWN) {
      const sentence = refusal(kind, name, cell);
      expect(sentence.startsWith(`${name}: "${cell}" is not `)).toBe(true);
      expect(sentence).toMatch(/\.$/);
      expect(sentence).not.toMatch(/closest/i);
    }
  });

  it.each(UNKNOWN)("beside a list is an error of each client that needs it: %j", (cell) => {
    const list = [
      ["Client", "Total tax", "Payments", "Planned filing"],
      ["Alder", 20_000, 15_000, "6/1/2027"],
    ];
    const answer = (heading: string, ...others: unknown[]): unknown =>
      (fromCatalog("ROSTER")(list, ...others, [[heading]]) as unknown[][])[1]?.[0];
    const begins = (name: string) => ({
      code: "#VALUE!",
      message: expect.stringMatching(new RegExp(`^${name}: "[^"]*" is not `)) as unknown,
    });
    expect(answer("Regular due date", cell, "4/10/2026", "")).toMatchObject(begins("taxYear"));
    expect(answer("Status", 2025, cell, "")).toMatchObject(begins("asOf"));
    expect(answer("Penalties and interest (planned)", 2025, "4/10/2026", cell)).toMatchObject(
      begins("assumedRate")
    );
  });

  const rangeUses = uses.filter(({ kind }) => kind.takes === "range");
  it.each(rangeUses)("is refused in a range of $id, $name, with its row", ({ name, kind }) => {
    if (OTHER_RANGES.includes(kind.id)) return;
    const ranges = RANGES[kind.id];
    if (!ranges) throw new RangeError(`The kind ${kind.id} has no range here.`);
    for (const cell of UNKNOWN)
      for (const [range, place] of ranges(cell)) {
        const sentence = refusal(kind, name, range);
        expect(sentence.startsWith(`${name}${place}: "${cell}" is not `)).toBe(true);
      }
  });
});
