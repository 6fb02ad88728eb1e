import { beforeEach, describe, expect, it, vi } from "vitest";
import type { FunctionText } from "../../src/addin/functionText";
import { renderAnswer } from "../../src/addin/renderAnswer";
import { formulaOf } from "../../src/addin/renderFunctions";
import { renderTables } from "../../src/addin/renderTables";
import { ruleTables } from "../../src/rules/ruleTables";
import { documentStandIn, StandInElement } from "./documentStandIn";

const written: FunctionText = {
  name: "ONE",
  description: "One.",
  parameters: [
    { name: "amount", description: "How much." },
    { name: "date", description: "When.", optional: true },
  ],
};

/** Elements of the guide in one element. */
function page(made: readonly unknown[]): StandInElement {
  const whole = new StandInElement("section");
  whole.append(...(made as StandInElement[]));
  return whole;
}

beforeEach(() => vi.stubGlobal("document", documentStandIn));

describe("the functions on the page", () => {
  it("are written as in a cell, with optional arguments in square brackets", () => {
    expect(formulaOf(written)).toBe("=EXT.ONE(amount, [date])");
    expect(formulaOf({ ...written, parameters: [] })).toBe("=EXT.ONE()");
  });
});

describe("an answer on the page", () => {
  const one = { text: "4/15/2026", kind: "number" } as const;

  it("is a line if it is one value", () => {
    const whole = page([renderAnswer([[one]], "Answer")]);
    expect(whole.all("output").map(({ textContent }) => textContent)).toEqual(["4/15/2026"]);
    expect(whole.all("table")).toEqual([]);
  });

  it("is a table with headings and a caption if it fills several cells", () => {
    const heading = { text: "Due", kind: "text" } as const;
    const whole = page([renderAnswer([[heading], [one]], "Dates")]);
    expect(whole.all("caption").map(({ textContent }) => textContent)).toEqual(["Dates"]);
    expect(whole.all("th").map(({ textContent, scope }) => [textContent, scope])).toEqual([
      ["Due", "col"],
    ]);
    expect(whole.all("td").map(({ textContent }) => textContent)).toEqual(["4/15/2026"]);
  });
});

describe("the rule tables on the page", () => {
  it("are a row each: title, last date covered and unverified entries", () => {
    const tables = [...ruleTables.values()];
    const rows = page([renderTables(tables)])
      .all("tr")
      .map((row) => row.content.map((cell) => (cell as StandInElement).textContent));
    expect(rows).toHaveLength(tables.length + 1);
    expect(rows[0]).toEqual(["Rule table", "Covers through", "Unverified entries"]);
    const rowOf = (id: string) => rows.find(([title]) => title === ruleTables.get(id)?.title);
    expect(rowOf("failure-to-pay")?.slice(1)).toEqual(["no end date", "none"]);
    expect(rowOf("underpayment-rate")?.slice(1)).toEqual(["12/31/2026", "none"]);
    expect(rowOf("state-extensions")?.[2]).toBe("5 of 51");
  });
});
