import { describe, expect, it } from "vitest";
import { excelErrorSentence } from "../../../src/addin/excel/excelErrors";
import { mustBeEnteredAgain, typedFormula } from "../../../src/addin/workbook/ownFormula";

describe("a formula that was calculated before the add-in was loaded", () => {
  it.each([
    ["=EXT.DUE(2025)", "#NAME?", true],
    ["=_xldudf_EXT_DUE(2025)", "#NAME?", true],
    ["=1+ext.due(A1)", "#BUSY!", true],
    ["=EXT.DUE(2025)", 46127, false],
    ["=EXT.DUE(A1)", "#VALUE!", false],
    ["=MYEXT.DUE(2025)", "#NAME?", false],
    ["=NEXT_DUE(2025)", "#NAME?", false],
    ["EXT.DUE(2025)", "#NAME?", false],
    ["#NAME?", "#NAME?", false],
    [46127, 46127, false],
  ])("%s that shows %s: %s", (formula, shown, must) => {
    expect(mustBeEnteredAgain(formula, shown)).toBe(must);
  });

  it("is entered as typed", () => {
    expect(typedFormula('=IF(A1="",_xldudf_EXT_DUE(A1),ext.charges(1))')).toBe(
      '=IF(A1="",EXT.DUE(A1),EXT.CHARGES(1))'
    );
  });
});

describe("an error of Excel", () => {
  it.each([
    [{ code: "InvalidOperationInCellEditMode" }, /^A cell is being edited/],
    [{ code: "AccessDenied" }, /protected or read-only/],
    [{ code: "InvalidSelection" }, /^No cell is selected/],
    [{ code: "ApiNotAvailable" }, /does not support this tool/],
    [{ code: "RequestPayloadSizeLimitExceeded" }, /too large/],
    [{ code: "SomethingNew" }, /\(SomethingNew\)\. Try again\./],
  ])("%j has a sentence", (thrown, sentence) => {
    expect(excelErrorSentence(thrown)).toMatch(sentence);
  });

  it.each([new TypeError("a bug"), undefined, { code: 7 }])("is not %s", (thrown) => {
    expect(excelErrorSentence(thrown)).toBeUndefined();
  });
});
