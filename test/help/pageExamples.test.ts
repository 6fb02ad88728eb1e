import { describe, expect, it } from "vitest";
import { formulaCall } from "../../src/addin/formulaCall";
import { inCell, serial } from "../functions/sheet";
import { declaredFunctions, worksheetFunction } from "../functions/worksheetFunctions";
import { bodyRows, page, section, textOf } from "./builtHelp";

const MOST_ROWS = 15;

/** The formulas of a function's examples, each with the words on its answer. */
const examples = declaredFunctions.flatMap(({ id, example }) =>
  example.split(/; (?==EXT\.)/).map((one) => {
    const [, formula = "", words = ""] = /^(=.*?\)) ([a-z]+:? .*)$/.exec(one) ?? [];
    return { id, formula, words };
  })
);

const examplesOn = (id: string): string => section(page(`${id}.html`), "examples");

/** What a cell holds that a page shows so: a day, which its format may mark in brackets, a number, a percentage, or the text itself. */
function held(text: string): unknown {
  const [, day] = /^(\d{4}-\d{2}-\d{2})(?: \([^)]*\))?$/.exec(text) ?? [];
  if (day !== undefined) return serial(day);
  if (/^-?[\d,]+(\.\d+)?$/.test(text)) return Number(text.replaceAll(",", ""));
  return /^[\d.]+%$/.test(text) ? Number(text.slice(0, -1)) / 100 : text;
}

/** The same for what a function answers, whose texts may look like numbers. */
function asHeld(cell: unknown): unknown {
  if (typeof cell === "boolean") return String(cell).toUpperCase();
  return typeof cell === "string" ? held(cell.replace(/\s+/g, " ").trim()) : cell;
}

/** The cells that a page shows below this formula, row by row. */
function spilled(id: string, formula: string): string[][] {
  const after = examplesOn(id)
    .split('<div class="sheet"')
    .find((part) => textOf(/aria-label="([^"]*)"/.exec(part)?.[1] ?? "").includes(formula));
  return bodyRows(after?.split("</div>")[0] ?? "").map(([, ...cells]) => cells);
}

describe("the answers that the pages show", () => {
  it.each(examples)("are those of the function: $formula", ({ id, formula }) => {
    const call = formulaCall(formula);
    const answer = inCell(worksheetFunction(call.id), ...call.values);
    if (!Array.isArray(answer)) {
      const row = bodyRows(examplesOn(id)).find(([written]) => written === formula);
      expect(held(row?.[1] ?? "")).toEqual(asHeld(answer));
      return;
    }
    const rows = (answer as unknown[][]).map((row) => row.map(asHeld));
    const shown = spilled(id, formula).map((row) => row.map(held));
    expect(shown).toEqual(rows.slice(0, MOST_ROWS));
    const left = rows.length - shown.length;
    if (left > 0)
      expect(textOf(examplesOn(id))).toMatch(new RegExp(`\\b${left} more rows? follow`));
  });

  const stated = examples.filter(({ words }) => words.startsWith("is "));
  it.each(stated)("are written as the comment states them: $formula $words", (example) => {
    const [, stands = ""] = /^is (.*?)(?:: .*| in this edition)?$/.exec(example.words) ?? [];
    const row = bodyRows(examplesOn(example.id)).find(([written]) => written === example.formula);
    expect(held(row?.[1] ?? "")).toEqual(held(stands));
  });

  it("are there for every function", () => {
    const ids = new Set(examples.filter(({ formula }) => formula !== "").map(({ id }) => id));
    expect(declaredFunctions.map(({ id }) => id).filter((id) => !ids.has(id))).toEqual([]);
    expect(stated.length).toBeGreaterThan(20);
  });
});

describe("a table in full", () => {
  it("is shown up to fifteen rows, and says what is left out", () => {
    expect(spilled("RULETABLES", "=EXT.RULETABLES()")).toHaveLength(MOST_ROWS);
    expect(textOf(examplesOn("RULETABLES"))).toMatch(/\d+ more rows follow/);
    expect(textOf(examplesOn("LINES"))).not.toMatch(/more rows? follow/);
  });
});
