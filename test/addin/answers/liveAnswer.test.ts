import { describe, expect, it } from "vitest";
import { formattedNumber, liveAnswer, shownCell } from "../../../src/addin/answers/liveAnswer";

const only = (formula: string) => liveAnswer(formula)[0]?.[0];

describe("a live answer", () => {
  it.each([
    ['=EXT.DUE(2023,,"out of country")', "6/17/2024"],
    ["=EXT.SHORTFALL(18250,15000)", "3,250.00"],
    ['=EXT.UNDERPAYRATE("4/1/2026")', "6.00%"],
    ['=EXT.ISDESIGNATED("UPS Ground")', "FALSE"],
    ['=EXT.STATEDUE(2025,"VA")', "5/1/2026"],
  ])("%s is shown as in a sheet: %s", (formula, text) => {
    expect(only(formula)?.text).toBe(text);
  });

  it("shows an error with its message", () => {
    expect(only('=EXT.DUE("soon")')).toEqual({
      text: '#VALUE!: taxYear: "soon" is not a tax year. Enter a year such as 2025, or the last date of a fiscal year, such as 6/30/2026.',
      kind: "error",
    });
  });

  it("is a table if the function fills several cells", () => {
    const rows = liveAnswer("=EXT.LINES(2025,20000,15000,5000)");
    expect(rows[0]?.map(({ text }) => text)).toEqual([
      "Line",
      "Description",
      "Amount",
      "Checked",
      "Source",
    ]);
    expect(rows[3]?.[2]).toEqual({ text: "5,000", kind: "number" });
  });

  it.each(["=SUM(1,2)", "=EXT.NOSUCH(1)", "=EXT.DUE(A1)"])("is not given for %s", (formula) => {
    expect(() => liveAnswer(formula)).toThrow(SyntaxError);
  });
});

describe("a number on the page", () => {
  it.each([
    [46127, "m/d/yyyy", "4/15/2026"],
    [46127.75, "m/d/yyyy", "4/15/2026"],
    [-0.5, "#,##0.00", "-0.50"],
    [1234567.891, "#,##0.00", "1,234,567.89"],
    [18250, "#,##0", "18,250"],
    [0.0725, "0.00%", "7.25%"],
    [3, "General", "3"],
  ])("%d as %s is %s", (value, format, text) => {
    expect(formattedNumber(value, format)).toBe(text);
  });

  it.each([
    [7, { text: "7", kind: "number" }],
    ["", { text: "", kind: "text" }],
    [true, { text: "TRUE", kind: "text" }],
    [null, { text: "", kind: "text" }],
    [{ code: "#N/A" }, { text: "#N/A", kind: "error" }],
  ])("is shown with its kind for a cell of %j", (cell, shown) => {
    expect(shownCell(cell)).toEqual(shown);
  });
});
