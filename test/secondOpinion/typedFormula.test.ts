import { describe, expect, it } from "vitest";
import { formulaCall } from "../../src/addin/answers/formulaCall";
import { inCell } from "../functions/sheet";
import { fromCatalog } from "../functions/fromCatalog";
import { answerOfCall } from "./answerOfCall";
import { dayWritten } from "./civilDays";
import { serialOf } from "./sheet";
import { cellsOf, typedFormula, type Call } from "./typedFormula";

const on = (text: string): { readonly day: number } => ({ day: dayWritten(text) });

const charges: Call = {
  name: "CHARGES",
  values: [2025, 20000, 18500.5, on("2026-10-15"), on("2026-10-15"), "yes", undefined, undefined],
};
const ledger: Call = {
  name: "LEDGER",
  values: [
    on("2025-06-30"),
    20000,
    [
      [on("2025-10-15"), 15000],
      [on("2026-04-15"), 5000.25],
    ],
    on("2026-04-15"),
    undefined,
    "ME",
  ],
};

describe("a call written as a formula", () => {
  it("has dates in DATE, texts in quotes, and no omitted arguments at the end", () => {
    expect(typedFormula(charges)).toBe(
      '=EXT.CHARGES(2025,20000,18500.5,DATE(2026,10,15),DATE(2026,10,15),"yes")'
    );
  });

  it("has dates in an array constant as text, and nothing between the commas of a blank", () => {
    expect(typedFormula(ledger)).toBe(
      '=EXT.LEDGER(DATE(2025,6,30),20000,{"2025-10-15",15000;"2026-04-15",5000.25},DATE(2026,4,15),,"ME")'
    );
  });

  it.each([
    [0.07, "0.07"],
    [0.0001, "0.0001"],
    [1e-7, "0.0000001"],
    [8_999_999_999.99, "8999999999.99"],
    [1e21, "1000000000000000000000"],
    ['a "b"', '"a ""b"""'],
  ])("has %j written as %s", (value, text) => {
    expect(typedFormula({ name: "SHORTFALL", values: [value] })).toBe(`=EXT.SHORTFALL(${text})`);
  });

  it.each([charges, ledger])(
    "of $name gives the same result with cells and as a formula",
    (call) => {
      const withSerials = typedFormula(call).replace(
        /DATE\((\d+),(\d+),(\d+)\)/g,
        (_, year: string, month: string, date: string) =>
          String(serialOf(`${year}-${month}-${date}`))
      );
      const { id, values } = formulaCall(withSerials);
      const typed = inCell(fromCatalog(id), ...values);
      expect(typed).toEqual(answerOfCall(call));
      expect(JSON.stringify(typed)).toMatch(/\d/);
    }
  );

  it("has nothing between the commas of an omitted argument", () => {
    expect(cellsOf(ledger)[4]).toBeUndefined();
    expect(cellsOf(charges)).toHaveLength(6);
  });
});
