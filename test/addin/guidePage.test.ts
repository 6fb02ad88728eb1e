import { beforeEach, describe, expect, it, vi } from "vitest";
import type { FunctionText } from "../../src/addin/functionText";
import { renderAnswer } from "../../src/addin/renderAnswer";
import { formulaOf } from "../../src/addin/renderFunctions";
import { knownThroughText, renderTables } from "../../src/addin/renderTables";
import { ruleTables } from "../../src/rules/ruleTables";
import { documentStandIn, StandInElement } from "./documentStandIn";

const written: FunctionText = {
  name: "ONE",
  description: "Answers one.",
  parameters: [
    { name: "amount", description: "How much." },
    { name: "day", description: "When.", optional: true },
  ],
};

/** What the guide makes for a page, put under one element. */
function page(made: readonly unknown[]): StandInElement {
  const whole = new StandInElement("section");
  whole.append(...(made as StandInElement[]));
  return whole;
}

beforeEach(() => vi.stubGlobal("document", documentStandIn));

describe("the functions on the page", () => {
  it("are written as in a cell, with what may be left out in brackets", () => {
    expect(formulaOf(written)).toBe("=EXT.ONE(amount, [day])");
    expect(formulaOf({ ...written, parameters: [] })).toBe("=EXT.ONE()");
  });
});

describe("an answer on the page", () => {
  const one = { text: "2026-04-15", kind: "number" } as const;

  it("is a line where it is one value", () => {
    const whole = page([renderAnswer([[one]], "Answer")]);
    expect(whole.all("output").map(({ textContent }) => textContent)).toEqual(["2026-04-15"]);
    expect(whole.all("table")).toEqual([]);
  });

  it("is a table with its headings and a caption where it spills", () => {
    const heading = { text: "Due", kind: "text" } as const;
    const whole = page([renderAnswer([[heading], [one]], "Dates")]);
    expect(whole.all("caption").map(({ textContent }) => textContent)).toEqual(["Dates"]);
    expect(whole.all("th").map(({ textContent, scope }) => [textContent, scope])).toEqual([
      ["Due", "col"],
    ]);
    expect(whole.all("td").map(({ textContent }) => textContent)).toEqual(["2026-04-15"]);
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

  it("are a row each: title and id, last known day, newest source and how well it is known", () => {
    const tables = [...ruleTables.values()];
    const rows = page([renderTables(tables)])
      .all("tr")
      .map((row) => row.content.map((cell) => (cell as StandInElement).textContent));
    expect(rows).toHaveLength(tables.length + 1);
    expect(rows[0]).toEqual(["Rule table", "Known through", "Newest source"]);
    const rowOf = (id: string) => rows.find(([title]) => title?.endsWith(` ${id}`));
    expect(rowOf("failure-to-pay")?.slice(1)).toEqual([
      "until the law changes",
      "26 U.S.C. 6651(a)(2), (b)(2), (h)read in the official text",
    ]);
    expect(rowOf("state-extensions")?.[2]).toMatch(
      /as reported elsewhere; 3 of 51 from memory: check$/
    );
  });
});
