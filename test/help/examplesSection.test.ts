import { describe, expect, it } from "vitest";
import { TASKS } from "../../src/functions/catalog";
import { bodyRows, page, section, textOf } from "./builtHelp";

/** The number of rows of a table that a page shows. */
const MOST_ROWS = 15;

const examples = TASKS.flatMap(({ functions }) =>
  Object.entries(functions).flatMap(([id, definition]) =>
    definition.examples.map((example) => ({ id, ...example }))
  )
);

const examplesOn = (id: string): string => section(page(`${id}.html`), "examples");

/** The cells that a page shows for a formula that fills several cells, row by row. */
function tableBelow(id: string, formula: string): string[][] {
  const after = examplesOn(id)
    .split('<div class="sheet"')
    .find((part) => textOf(/aria-label="([^"]*)"/.exec(part)?.[1] ?? "").includes(formula));
  return bodyRows(after?.split("</div>")[0] ?? "").map(([, ...cells]) => cells);
}

// The stated answers are in the definitions of the functions; their tests name the sources.
describe("the answers of the built functions on the pages", () => {
  it.each(examples)("are those stated: $formula", ({ id, formula, answer, remark }) => {
    const table = tableBelow(id, formula);
    if (table.length === 0) {
      const row = bodyRows(examplesOn(id)).find(([written]) => written === formula);
      expect(row?.[1]).toBe(answer);
      if (remark !== undefined) expect(row?.[2]).toBe(remark);
    } else {
      expect(table.flat()).toContain(answer);
      if (remark !== undefined) expect(textOf(examplesOn(id))).toContain(`${answer}: ${remark}.`);
    }
  });

  it("are given for every function", () => {
    for (const { functions } of TASKS)
      for (const [id, { examples: own }] of Object.entries(functions))
        expect(own.length, id).toBeGreaterThan(0);
  });
});

describe("a long table", () => {
  it("is shown up to fifteen rows, with the number of rows that follow", () => {
    expect(tableBelow("RULETABLES", "=EXT.RULETABLES()")).toHaveLength(MOST_ROWS);
    expect(textOf(examplesOn("RULETABLES"))).toMatch(/\d+ more rows follow/);
    expect(textOf(examplesOn("LINES"))).not.toMatch(/more rows? follow/);
  });
});
