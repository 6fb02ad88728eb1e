import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { requestLines, type FilledLine } from "../../../src/calculation/request/requestLines";
import { rulebook } from "../../../src/rules/rulebook";
import { dollarsUpTo, filers, RUNS } from "../arbitrary";
import { usd } from "../given";

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
    const lines = requestLines(usd("18250"), usd("15000"), usd("3250"), "resident", rulebook);
    expect(lines.map((line) => line.line)).toEqual(["4", "5", "6", "7", "8", "9"]);
    expect(amounts(lines)).toEqual({ 4: "18250", 5: "15000", 6: "3250", 7: "3250" });
    for (const line of lines) expect(line.source.citation).toContain("4868");
  });

  // 26 U.S.C. 6102(a): under 50 cents dropped; line 6 from the lines above it as they stand on the form.
  it("are whole dollars and add up as they stand", () => {
    const lines = requestLines(usd("1000.50"), usd("500.49"), usd("500.01"), "resident", rulebook);
    expect(amounts(lines)).toEqual({ 4: "1001", 5: "500", 6: "501", 7: "500" });
  });

  it("show no balance below zero", () => {
    const lines = requestLines(usd("1000"), usd("1500"), usd("0"), "resident", rulebook);
    expect(amounts(lines)).toEqual({ 4: "1000", 5: "1500", 6: "0", 7: "0" });
  });

  it.each([
    ["resident", false, false],
    ["out of country", true, false],
    ["nonresident", false, true],
  ] as const)("for a filer %s tick 8: %s, 9: %s", (filerType, line8, line9) => {
    const lines = requestLines(usd("1"), usd("0"), usd("0"), filerType, rulebook);
    expect(ticks(lines)).toEqual([
      ["8", line8],
      ["9", line9],
    ]);
  });

  it("keep line 6 equal to line 4 less line 5, within a dollar of the exact balance", () => {
    fc.assert(
      fc.property(dollarsUpTo(90_000), dollarsUpTo(90_000), filers, (tax, payments, filerType) => {
        const lines = amounts(requestLines(tax, payments, usd(0), filerType, rulebook));
        const shown = Math.max(0, Number(lines["4"]) - Number(lines["5"]));
        expect(Number(lines["6"])).toBe(shown);
        const exact = Math.max(0, tax.minus(payments).toNumber());
        expect(Math.abs(Number(lines["6"]) - exact)).toBeLessThanOrEqual(1);
      }),
      RUNS
    );
  });
});
