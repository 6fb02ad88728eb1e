import { describe, expect, it } from "vitest";
import { shownCell } from "../../src/help/shownAnswer";

describe("a cell of an answer", () => {
  it.each([
    [{ value: 46127, numberFormat: "m/d/yyyy" }, "4/15/2026", true],
    [{ value: 2958465, numberFormat: "m/d/yyyy" }, "12/31/9999", true],
    [{ value: 1234.5, numberFormat: "#,##0.00" }, "1,234.50", true],
    [{ value: 18250, numberFormat: "#,##0" }, "18,250", true],
    [{ value: 0.0681, numberFormat: "0.00%" }, "6.81%", true],
    [{ value: 92 }, "92", true],
    [{ value: "Wednesday" }, "Wednesday", false],
    [{ value: true }, "TRUE", false],
    [{ error: "#N/A", message: "There is no figure." }, "#N/A", false],
    [{}, "", false],
  ])("%j is shown as %s", (cell, text, isNumber) => {
    expect(shownCell(cell)).toEqual({ text, isNumber });
  });
});
