import { expect, it } from "vitest";
import { typedSpelling } from "../../src/demo/sheet/typedSpelling";
import { fileSpelling } from "../../src/demo/workbook/fileSpelling";
import { OwnFunctionNames } from "../../src/demo/workbook/ownFunctionNames";

const names = new OwnFunctionNames("EXT", ["DUE", "RULETABLES"]);

it.each([
  ["_xldudf_EXT_DUE(A1)+1", "EXT.DUE(A1)+1"],
  [
    "IF(A1>1,_xldudf_EXT_DUE(A1,,B1),_xldudf_EXT_RULETABLES())",
    "IF(A1>1,EXT.DUE(A1,,B1),EXT.RULETABLES())",
  ],
  ["_xlfn.XLOOKUP(1,_xlfn._xlws.SORT(A1:A3),B1:B3)", "XLOOKUP(1,SORT(A1:A3),B1:B3)"],
  ["_xlfn.LET(_xlpm.x,1,_xlpm.x+A1)", "LET(x,1,x+A1)"],
  ['"_xlfn.XLOOKUP _xldudf_EXT_DUE("&A1', '"_xlfn.XLOOKUP _xldudf_EXT_DUE("&A1'],
  ["SUM('_xlfn.A'!A1)", "SUM('_xlfn.A'!A1)"],
])("spells %s as typed, and back", (stored, typed) => {
  expect(typedSpelling(stored, names)).toBe(typed);
  expect(fileSpelling(typed, names)).toBe(stored);
});

it.each([
  ["[2]!_xldudf_EXT_DUE(4)", "EXT.DUE(4)"],
  ["'C:\\Add ins\\FUNCRES.XLAM'!_xldudf_EXT_DUE(5)", "EXT.DUE(5)"],
  ["_xldudf_OTHER_SUM(1)", "_xldudf_OTHER_SUM(1)"],
])("reads a damaged or foreign name: %s", (stored, typed) => {
  expect(typedSpelling(stored, names)).toBe(typed);
});
