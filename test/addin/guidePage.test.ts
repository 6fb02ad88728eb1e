import { beforeEach, describe, expect, it, vi } from "vitest";
import type { FunctionText } from "../../src/addin/functionText";
import { formulaOf, renderFunctions } from "../../src/addin/renderFunctions";
import { knownThroughText, renderTables } from "../../src/addin/renderTables";
import { documentStandIn, StandInElement } from "./documentStandIn";

const first: FunctionText = {
  name: "ONE",
  description: "Answers one.",
  parameters: [
    { name: "amount", description: "How much." },
    { name: "day", description: "When.", optional: true },
  ],
};
const second: FunctionText = { name: "TWO", description: "Answers two.", parameters: [] };
const third: FunctionText = { ...second, name: "THREE" };
const texts = new Map([first, second, third].map((text) => [text.name, text] as const));
const guide = [
  { task: "First task", name: "ONE" },
  { task: "Second task", name: "TWO" },
  { task: "Second task", name: "THREE" },
];

/** What the guide makes for a page, put under one element. */
function page(made: readonly unknown[]): StandInElement {
  const whole = new StandInElement("section");
  whole.append(...(made as StandInElement[]));
  return whole;
}

beforeEach(() => vi.stubGlobal("document", documentStandIn));

describe("the functions on the page", () => {
  it("are written as in a cell, with what may be left out in brackets", () => {
    expect(formulaOf(first)).toBe("=EXT.ONE(amount, [day])");
    expect(formulaOf(second)).toBe("=EXT.TWO()");
  });

  it("stand under a heading for their task, in the order given", () => {
    const whole = page(renderFunctions(guide, texts));
    expect(whole.content.map((part) => (part as StandInElement).tagName)).toEqual([
      "h3",
      "article",
      "h3",
      "article",
      "article",
    ]);
    expect(whole.all("h3").map(({ textContent }) => textContent)).toEqual([
      "First task",
      "Second task",
    ]);
    expect(whole.all("h4").map(({ textContent }) => textContent)).toEqual(["ONE", "TWO", "THREE"]);
  });

  it("can each be linked to", () => {
    expect(
      page(renderFunctions(guide.slice(0, 2), texts))
        .all("article")
        .map(({ id }) => id)
    ).toEqual(["ONE", "TWO"]);
  });

  it("show every argument with its meaning, and whether it may be left out", () => {
    const whole = page(renderFunctions(guide.slice(0, 1), texts));
    expect(whole.all("dt").map(({ textContent }) => textContent)).toEqual([
      "amount",
      "day (optional)",
    ]);
    expect(whole.all("dd").map(({ textContent }) => textContent)).toEqual(["How much.", "When."]);
    expect(whole.all("summary").map(({ textContent }) => textContent)).toEqual([
      "Arguments of ONE",
    ]);
  });

  it("offer no arguments to open where there are none", () => {
    expect(page(renderFunctions(guide.slice(1, 2), texts)).all("details")).toEqual([]);
  });
});

describe("the rule tables on the page", () => {
  it.each([
    ["2026-12-31", "December 31, 2026"],
    ["2027-01-02", "January 2, 2027"],
    ["9999-12-31", "until the law changes"],
  ])("are known through %s, read as %s", (day, text) => {
    expect(knownThroughText(day)).toBe(text);
  });

  it("are a row each, with title, id and last known day", () => {
    const table = page([
      renderTables([
        { id: "some-rate", title: "Some rate", knownThrough: "2026-12-31" },
        { id: "some-law", title: "Some law", knownThrough: "9999-12-31" },
      ]),
    ]);
    expect(
      table.all("tr").map((row) => row.content.map((cell) => (cell as StandInElement).textContent))
    ).toEqual([
      ["Rule table", "Known through"],
      ["Some rate some-rate", "December 31, 2026"],
      ["Some law some-law", "until the law changes"],
    ]);
    expect(table.all("th").map(({ scope }) => scope)).toEqual(["col", "col", "row", "row"]);
  });
});
