import { describe, expect, it } from "vitest";
import { calculationText, OMITTED_MARK } from "../../src/demo/workbook/calculationText";
import { fileSpelling } from "../../src/demo/workbook/fileSpelling";
import { formulaPieces } from "../../src/demo/workbook/formulaPieces";
import { OwnFunctionNames } from "../../src/demo/workbook/ownFunctionNames";

const names = new OwnFunctionNames("EXT", ["DUE", "RULETABLES"]);

describe("formula pieces", () => {
  it.each([
    'IF(A1="it says ""no"" (", EXT.DUE($B$2,,"x"), {1,2;3,4})',
    "'It''s a sheet'!A1:B$2+Table[[#This Row],[Odd '] name]]*1.5E+3",
    "SUM(A:A,1:3)%-Größe_1",
    '"an unfinished text',
    "",
  ])("joined are the formula: %s", (formula) => {
    expect(
      formulaPieces(formula)
        .map((piece) => piece.text)
        .join("")
    ).toBe(formula);
  });
});

describe("the calculated text", () => {
  it.each([
    ["EXT.DUE(A1)", "EXT.DUE(7,A1)"],
    ["_xldudf_EXT_DUE(A1)", "EXT.DUE(7,A1)"],
    ["ext.due( A1 )", "EXT.DUE(7, A1 )"],
    ["EXT.RULETABLES()", "EXT.RULETABLES(7)"],
    ["EXT.RULETABLES( )", "EXT.RULETABLES(7 )"],
    ["EXT.DUE(A1,,B1)", `EXT.DUE(7,A1,"${OMITTED_MARK}",B1)`],
    ["EXT.DUE(A1,)", `EXT.DUE(7,A1,"${OMITTED_MARK}")`],
    ["EXT.DUE(,A1)", `EXT.DUE(7,"${OMITTED_MARK}",A1)`],
    ["EXT.DUE(IF(A1,,2),{1,2})", "EXT.DUE(7,IF(A1,,2),{1,2})"],
    ["EXT.DUE(EXT.DUE(1,),2)", `EXT.DUE(7,EXT.DUE(7,1,"${OMITTED_MARK}"),2)`],
    ['"EXT.DUE(1)"&EXT.DUES(1)', '"EXT.DUE(1)"&EXT.DUES(1)'],
    ["'EXT.DUE(1)'!A1", "'EXT.DUE(1)'!A1"],
    ["[12]!_xldudf_EXT_DUE(1)+[1]Sheet!A1", "EXT.DUE(7,1)+[1]Sheet!A1"],
  ])("of %s", (formula, text) => {
    expect(calculationText(formula, 7, names)).toBe(text);
  });
});

describe("the spelling of files", () => {
  it.each([
    ["EXT.DUE(A1)+1", "_xldudf_EXT_DUE(A1)+1"],
    ["_xldudf_EXT_DUE(A1)", "_xldudf_EXT_DUE(A1)"],
    ["xlookup(1,SORT(A1:A3),B1:B3)", "_xlfn.XLOOKUP(1,_xlfn._xlws.SORT(A1:A3),B1:B3)"],
    ["_xlfn._xlws.SORT(A1:A3)", "_xlfn._xlws.SORT(A1:A3)"],
    ["_xlfn.XLOOKUP(1,A1:A3,B1:B3)", "_xlfn.XLOOKUP(1,A1:A3,B1:B3)"],
    ["LET(x, 1, y,x+A1, x*y)", "_xlfn.LET(_xlpm.x, 1, _xlpm.y,_xlpm.x+A1, _xlpm.x*_xlpm.y)"],
    [
      "LET(f,LAMBDA(a,b,a-b),f(2,1))",
      "_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.a,_xlpm.b,_xlpm.a-_xlpm.b),_xlpm.f(2,1))",
    ],
    ["SUM(x,LET(Day,EXT.DUE(1),Day))", "SUM(x,_xlfn.LET(_xlpm.Day,_xldudf_EXT_DUE(1),_xlpm.Day))"],
    ['SUM(A1,"XLOOKUP(1)")', 'SUM(A1,"XLOOKUP(1)")'],
  ])("of %s", (formula, stored) => {
    expect(fileSpelling(formula, names)).toBe(stored);
    expect(fileSpelling(stored, names)).toBe(stored);
  });
});
