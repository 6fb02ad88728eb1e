import { describe, expect, it } from "vitest";
import { EngineFormula, OMITTED_MARK } from "../../src/demo/workbook/engineFormula";
import { fileSpelling } from "../../src/demo/workbook/fileSpelling";
import { formulaPieces } from "../../src/host/formulaPieces";
import { formulaText, parseFormula } from "../../src/demo/workbook/formulaTree";
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

describe("the text of a parsed formula", () => {
  it.each([
    "1+2*3-(4-5)-6/(7/8)^-2",
    "(1+2)*3&(4=5)",
    "-(1+2)^2%",
    "(-2)%+2%%",
    '"it says ""no"""&TRUE',
    "'It''s a sheet'!A1:B2+'One:Two'!C3",
    "SUM(A:A,1:3)+F(,1,)",
    '{1,-2;"x",#N/A}',
    "A1:A9 B2:C3",
    "A1:INDEX(B1:B9,2)",
    "INDEX((A1:B2,D4),1,1,2)",
    "LET(x,1E-7,x*1E+21)",
  ])("is read as the same formula: %s", (formula) => {
    const tree = parseFormula(formula);
    expect(tree).toBeDefined();
    if (tree !== undefined) expect(parseFormula(formulaText(tree))).toEqual(tree);
  });
});

describe("the calculated text", () => {
  const grid = {
    name: "Grid",
    sheet: "Sheet",
    top: 5,
    left: 1,
    bottom: 9,
    columns: ["Name ", "Amount"],
  };
  const world = {
    sheets: ["Sheet"],
    tables: [{ ...grid, hasHeader: true, hasTotals: true }],
    names,
    definedName: (name: string) =>
      ({
        Rate: ["Sheet!$B$2"],
        Left: ["Sheet!A1"],
        Both: ["Sheet!$A$1:$A$2", "Sheet!$C$1"],
        Tax: ["1+1"],
      })[name]?.flatMap((text) => parseFormula(text) ?? []),
  };
  const written = (formula: string, readsBlocks = true): string => {
    const place = { sheet: "Sheet", row: 7, column: 3 };
    const tree = parseFormula(formula);
    if (tree === undefined) return "not read";
    return formulaText(new EngineFormula(7, place, readsBlocks, world).of(tree)).replaceAll(
      "'Sheet'!",
      ""
    );
  };

  it.each([
    ["EXT.DUE(A1)", "EXT.DUE(7,A1)"],
    ["_xldudf_EXT_DUE(A1)", "EXT.DUE(7,A1)"],
    ["ext.due( A1 )", "EXT.DUE(7,A1)"],
    ["EXT.RULETABLES( )", "EXT.RULETABLES(7)"],
    ["EXT.DUE(A1,,B1)", `EXT.DUE(7,A1,"${OMITTED_MARK}",B1)`],
    ["EXT.DUE(A1,)", `EXT.DUE(7,A1,"${OMITTED_MARK}")`],
    ["EXT.DUE(,A1)", `EXT.DUE(7,"${OMITTED_MARK}",A1)`],
    ["EXT.DUE(IF(A1,,2),{1,2})", "EXT.DUE(7,IF(A1,,2),{1,2})"],
    ["EXT.DUE(EXT.DUE(1,),2)", `EXT.DUE(7,EXT.DUE(7,1,"${OMITTED_MARK}"),2)`],
    ['"EXT.DUE(1)"&EXT.DUES(1)', '"EXT.DUE(1)"&EXT.DUES(1)'],
    ["'EXT.DUE(1)'!A1", "'EXT.DUE(1)'!A1"],
  ])("of %s", (formula, text) => {
    expect(written(formula)).toBe(text);
  });

  it.each([
    ["SUM(Grid[Amount])", "SUM(B6:B8)"],
    ["SUM([Amount])", "not a part"],
    ["Grid[[#This Row],[Name ]]", "A7:A7"],
    ["Grid[@Amount]", "B7:B7"],
    ["ROWS(Grid[#All])", "ROWS(A5:B9)"],
    ["Grid[[#Headers],[Amount]]", "B5:B5"],
    ["Grid[[#Totals],[Amount]]", "B9:B9"],
    ["SUM(Rate,Both,1)", "SUM(B2:B2,(A1:A2,C1),1)"],
    ["Left*Tax", "C7*Tax"],
  ])("has cells instead of tables and names: %s", (formula, text) => {
    expect(written(formula)).toBe(text === "not a part" ? "SUM(#REF!)" : text);
  });

  it.each([
    ["A1:A9+1", "A7+1"],
    ["A1:H1*B:B", "C1*B7"],
    ["A1:B2", "#VALUE!"],
    ["A8:A9", "#VALUE!"],
    ["SUM(A1:A9)", "SUM(A1:A9)"],
    ["SUM(A1:A9*2)", "SUM(A7*2)"],
    ["SUMPRODUCT(A1:A9*2)", "SUMPRODUCT(A1:A9*2)"],
    ["COUNTIF(A1:A9,B1:B9)", "COUNTIF(A1:A9,B7)"],
    ["INDEX(A1:A9*2,2)", "INDEX(A1:A9*2,2)"],
    ["EXT.DUE(A1:A9)", "EXT.DUE(7,A1:A9)"],
  ])("has one cell where an older formula needs one value: %s", (formula, text) => {
    expect(written(formula, false)).toBe(text);
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
