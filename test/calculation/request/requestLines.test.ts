import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { requestLines, type FilledLine } from "../../../src/calculation/request/requestLines";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import { dollarsUpTo, filers, RUNS } from "../arbitrary";
import { fiscalYear, usd } from "../given";

const YEAR = calendarTaxYear(2025);

const amounts = (lines: readonly FilledLine[]): Readonly<Record<string, string | undefined>> =>
  Object.fromEntries(
    lines
      .filter((line) => line.amount !== undefined)
      .map((line) => [line.line, line.amount?.toString()])
  );
const ticks = (lines: readonly FilledLine[]): readonly (readonly [string, boolean])[] =>
  lines.flatMap((line) => (line.checked === undefined ? [] : [[line.line, line.checked] as const]));

describe("the lines of the request", () => {
  // Form 4868: lines 4 to 7 in dollars, boxes on 8 and 9.
  it("are 4 to 9 in order, each with its source", () => {
    const lines = requestLines(YEAR, usd("18250"), usd("15000"), usd("3250"), "resident", rulebook);
    expect(lines.map((line) => line.line)).toEqual(["4", "5", "6", "7", "8", "9"]);
    expect(amounts(lines)).toEqual({ 4: "18250", 5: "15000", 6: "3250", 7: "3250" });
    for (const line of lines) expect(line.source.citation).toContain("4868");
  });

  // 26 U.S.C. 6102(a): under 50 cents dropped; line 6 from the lines above it as they stand on the form.
  it("are whole dollars and add up as they stand", () => {
    const lines = requestLines(
      YEAR,
      usd("1000.50"),
      usd("500.49"),
      usd("500.01"),
      "resident",
      rulebook
    );
    expect(amounts(lines)).toEqual({ 4: "1001", 5: "500", 6: "501", 7: "500" });
  });

  it("show no balance below zero", () => {
    const lines = requestLines(YEAR, usd("1000"), usd("1500"), usd("0"), "resident", rulebook);
    expect(amounts(lines)).toEqual({ 4: "1000", 5: "1500", 6: "0", 7: "0" });
  });

  it.each([
    ["resident", false, false],
    ["out of country", true, false],
    ["nonresident", false, true],
  ] as const)("for a filer %s tick 8: %s, 9: %s", (filerType, line8, line9) => {
    const lines = requestLines(YEAR, usd("1"), usd("0"), usd("0"), filerType, rulebook);
    expect(ticks(lines)).toEqual([
      ["8", line8],
      ["9", line9],
    ]);
  });

  it("keep line 6 equal to line 4 less line 5, within a dollar of the exact balance", () => {
    fc.assert(
      fc.property(dollarsUpTo(90_000), dollarsUpTo(90_000), filers, (tax, payments, filerType) => {
        const lines = amounts(requestLines(YEAR, tax, payments, usd(0), filerType, rulebook));
        const shown = Math.max(0, Number(lines["4"]) - Number(lines["5"]));
        expect(Number(lines["6"])).toBe(shown);
        const exact = Math.max(0, tax.minus(payments).toNumber());
        expect(Math.abs(Number(lines["6"]) - exact)).toBeLessThanOrEqual(1);
      }),
      RUNS
    );
  });

  // The lines were read in the form of 2025; the table covers the forms of 2016 to 2025 (rules/request-lines.json).
  it.each([2016, 2025])("are those of the form of %d", (year) => {
    const lines = requestLines(calendarTaxYear(year), usd(1), usd(0), usd(0), "resident", rulebook);
    expect(lines).toHaveLength(6);
  });

  it.each([
    [2015, "There is no figure for 12/31/2015. The table begins on 12/31/2016"],
    [2026, "There is no figure for 12/31/2026. The table covers dates through 12/31/2025"],
  ])("are not in the table for the form of %d", (year, sentence) => {
    expect(() =>
      requestLines(calendarTaxYear(year), usd(1), usd(0), usd(0), "resident", rulebook)
    ).toThrow(sentence);
  });

  // Form 4868 is for the tax year beginning in its year: common practice, no source.
  it("use the form of the year in which a fiscal year begins", () => {
    const of = (end: string) => () =>
      requestLines(fiscalYear(end), usd(1), usd(0), usd(0), "resident", rulebook);
    expect(of("2026-06-30")).not.toThrow();
    expect(of("2027-06-30")).toThrow("12/31/2026");
  });
});
