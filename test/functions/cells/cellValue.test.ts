import { describe, expect, it } from "vitest";
import {
  cellValue,
  isBlank,
  isBlankOrZero,
  isEmptyCell,
  shown,
} from "../../../src/functions/cells/cellValue";
import { ErrorCell } from "../../../src/functions/cells/hostError";

describe("the value of a cell", () => {
  it.each([["text"], [""], [0], [-1.5], [true], [false], [null]])("is %j as it came", (cell) => {
    expect(cellValue(cell)).toBe(cell);
  });

  it("is nothing for an argument left out", () => {
    expect(cellValue(undefined)).toBeNull();
  });

  // Shapes of formatted values: Excel.DoubleCellValue, FormattedNumberCellValue, StringCellValue of @types/office-js.
  it.each([
    [{ type: "Double", basicValue: 46127, numberFormat: "yyyy-mm-dd" }, 46127],
    [{ type: "FormattedNumber", basicValue: 0.07, numberFormat: "0.00%" }, 0.07],
    [{ type: "String", basicType: "String", basicValue: "ME" }, "ME"],
    [{ type: "Boolean", basicValue: true }, true],
    [{ type: "Double", basicValue: 0 }, 0],
  ])("is the basic value of %j", (cell, value) => {
    expect(cellValue(cell)).toBe(value);
  });

  it.each([
    [{ type: "Error", basicType: "Error", basicValue: "#DIV/0!", errorType: "Div0" }, "#DIV/0!"],
    [{ code: "#N/A" }, "#N/A"],
    [{ code: "#VALUE!", message: "a sentence of another function" }, "#VALUE!"],
    [new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, "no figure"), "#N/A"],
    [{ errorType: "Spill" }, "#VALUE!"],
    [{ basicValue: "#REF!" }, "#REF!"],
  ])("is the error of %j, which passes through", (cell, code) => {
    expect(() => cellValue(cell)).toThrow(new ErrorCell(code));
  });

  it.each([[{}], [[]], [{ type: "Entity", text: "a card" }], [{ basicValue: null }], [[[1]]]])(
    "is no usable value for %j",
    (cell) => {
      expect(cellValue(cell)).toBe("[object]");
    }
  );
});

describe("a cell that counts as not given", () => {
  it.each([
    [null, true],
    ["", true],
    ["  ", true],
    [0, false],
    [false, false],
    ["0", false],
  ])("%j, where a zero may be meant: %j", (value, blank) => {
    expect(isBlank(value)).toBe(blank);
  });

  it.each([
    [0, true],
    [null, true],
    ["", true],
    [false, false],
    [1, false],
    ["0", false],
  ])("%j, where no zero can be meant: %j", (value, blank) => {
    expect(isBlankOrZero(value)).toBe(blank);
  });

  it.each([
    [undefined, true],
    [null, true],
    [" ", true],
    [0, false],
    [{ code: "#N/A" }, false],
  ])("%j, in a column: %j", (cell, empty) => {
    expect(isEmptyCell(cell)).toBe(empty);
  });
});

describe("a value in a message", () => {
  it.each([
    [null, "nothing"],
    [1.5, "1.5"],
    [Number.NaN, "NaN"],
    [true, "TRUE"],
    [false, "FALSE"],
    ["next year", '"next year"'],
    ["x".repeat(40), `"${"x".repeat(40)}"`],
    ["x".repeat(41), `"${"x".repeat(40)}…"`],
  ])("%j reads %s", (value, text) => {
    expect(shown(value)).toBe(text);
  });
});
