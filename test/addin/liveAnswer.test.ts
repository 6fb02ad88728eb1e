import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { formattedNumber, liveAnswer, shownCell } from "../../src/addin/liveAnswer";
import { worksheetFunctions } from "../../src/addin/worksheetFunctions";
import { useFormattedNumbers } from "../../src/functions/numberFormats";
import { metadata } from "../contract/builtAddIn";

const only = (formula: string) => liveAnswer(formula)[0]?.[0];

describe("the functions that the guide calls", () => {
  it("are those the host is told of", () => {
    const told = metadata.functions.map(({ id }) => id);
    expect([...worksheetFunctions.keys()].toSorted()).toEqual(told.toSorted());
  });
});

describe("a live answer", () => {
  beforeEach(() => {
    useFormattedNumbers("double");
  });
  afterEach(() => {
    useFormattedNumbers("plain");
  });

  it.each([
    ['=EXT.DUE(2023,,"abroad")', "2024-06-17"],
    ["=EXT.SHORTFALL(18250,15000)", "3,250.00"],
    ['=EXT.UNDERPAYRATE("2026-04-01")', "6.00%"],
    ['=EXT.ISDESIGNATED("UPS Ground")', "FALSE"],
    ['=EXT.STATEDUE(2025,"VA")', "2026-05-01 (rule of 2021)"],
  ])("%s reads as the sheet would show it: %s", (formula, text) => {
    expect(only(formula)?.text).toBe(text);
  });

  it("shows an error with its sentence", () => {
    expect(only('=EXT.DUE("soon")')).toEqual({
      text: '#VALUE!: taxYear: "soon" is not a tax year; give a year such as 2025, or the last day of a fiscal year',
      kind: "error",
    });
  });

  it("fills a table where the answer spills", () => {
    const rows = liveAnswer("=EXT.LINES(20000,15000,5000)");
    expect(rows[0]?.map(({ text }) => text)).toEqual(["Line", "What", "Dollars", "Tick", "Source"]);
    expect(rows[3]?.[2]).toEqual({ text: "5,000", kind: "number" });
  });

  it.each(["=SUM(1,2)", "=EXT.NOSUCH(1)", "=EXT.DUE(A1)"])("is refused for %s", (formula) => {
    expect(() => liveAnswer(formula)).toThrow(SyntaxError);
  });
});

describe("a number as the page writes it", () => {
  it.each([
    [46127, "yyyy-mm-dd", "2026-04-15"],
    [46127.75, "yyyy-mm-dd", "2026-04-15"],
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
  ])("a cell of %j", (cell, shown) => {
    expect(shownCell(cell)).toEqual(shown);
  });
});
