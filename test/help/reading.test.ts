import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { examplesOf } from "../../src/help/example";
import { readFunctionDocs } from "../../src/help/functionDocs";
import { refusalsOf } from "../../src/help/refusals";
import { remarkOf, shownCell } from "../../src/help/shownAnswer";
import { hostOfBuiltAddIn } from "../../src/host/builtAddIn";

const docs = readFunctionDocs(fileURLToPath(new URL("../../src/functions", import.meta.url)));

describe("reading the comments", () => {
  it("keeps the words of a citation that look like a name", () => {
    expect(docs.get("SHORTFALL")?.see).toBe("Form 4868, lines 4 to 6");
    expect(docs.get("DUE")?.see).toBe("26 U.S.C. 6072(a), (c), 7503, 7508A; 26 CFR 1.6081-5(a)");
  });

  it("leaves the type of an answer out", () => {
    expect(docs.get("DUE")?.returns).toBe("The day, as a worksheet date.");
  });

  it("reads what an error is shown for, one error after the other", () => {
    expect(
      refusalsOf("`#VALUE!` for a label nobody knows, or an amount; `#N/A` for a year not held.")
    ).toEqual([
      { code: "#VALUE!", when: "for a label nobody knows, or an amount" },
      { code: "#N/A", when: "for a year not held" },
    ]);
    expect(refusalsOf("")).toEqual([]);
  });

  it.each([...docs.values()])("leaves no error of $id unread", ({ throws }) => {
    expect(refusalsOf(throws).map(({ code }) => code)).toEqual(
      throws.match(/#[A-Z/]+[!?]?/g) ?? []
    );
  });
});

describe("an example", () => {
  const host = hostOfBuiltAddIn("null");

  it("ends its formula at its own bracket, whatever stands in text and blocks", () => {
    const [one, other] = examplesOf(
      '=EXT.DUE(2025,"(;)") is #VALUE!; =EXT.LEDGER(2025,1,{"2026-04-15",1;"2026-04-16",2},"2026-10-15") ends so',
      host
    );
    expect(one).toMatchObject({ formula: '=EXT.DUE(2025,"(;)")', words: "is #VALUE!" });
    expect(other?.formula).toMatch(/"2026-10-15"\)$/);
    expect(other?.answer[0]?.[0]).toEqual({ value: "Day" });
  });

  it("is refused where it says nothing of its answer", () => {
    expect(() => examplesOf("=EXT.DUE(2025)", host)).toThrow(SyntaxError);
  });

  it.each([
    ["is 10.00", ""],
    ["is 10.00: two months begun", "two months begun"],
    ["is 2026-12-31 in this edition", ""],
    ["begins: We are asking", ""],
    ["begins with electronic payment", "begins with electronic payment"],
  ])("adds to an answer what its words say beyond it: %s", (words, remark) => {
    expect(remarkOf(words)).toBe(remark);
  });
});

describe("a cell of an answer", () => {
  it.each([
    [{ value: 46127, numberFormat: "yyyy-mm-dd" }, "2026-04-15", true],
    [{ value: 1234.5, numberFormat: "#,##0.00" }, "1,234.50", true],
    [{ value: 18250, numberFormat: "#,##0" }, "18,250", true],
    [{ value: 0.0681, numberFormat: "0.00%" }, "6.81%", true],
    [{ value: 92 }, "92", true],
    [{ value: "Wednesday" }, "Wednesday", false],
    [{ value: true }, "TRUE", false],
    [{ error: "#N/A", message: "not held" }, "#N/A", false],
    [{}, "", false],
  ])("%j is shown as %s", (cell, text, isNumber) => {
    expect(shownCell(cell)).toEqual({ text, isNumber });
  });
});
