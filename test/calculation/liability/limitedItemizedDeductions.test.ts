import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { limitedItemizedDeductions } from "../../../src/calculation/liability/limitedItemizedDeductions";
import { rulebook } from "../../../src/rules/rulebook";
import { dollarsUpTo, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

const left = (taxYear: number, status: string, deductions: number, income: number): string =>
  limitedItemizedDeductions(
    year(taxYear),
    statusOf(status),
    usd(deductions),
    usd(income),
    rulebook
  ).toString();

// 26 U.S.C. 68(a) as amended by Pub. L. 119-21 sec. 70111: 2/37 of the lesser of the deductions and the income above the 37% edge.
describe("the limit of 2026", () => {
  it.each([
    ["single", 640_600],
    ["head", 640_600],
    ["separate", 384_350],
    ["joint", 768_700],
    ["survivor", 768_700],
  ])("of %s bites above %d", (status, edge) => {
    expect(left(2026, status, 37_000, edge - 1)).toBe("37000");
    expect(left(2026, status, 37_000, edge)).toBe("37000");
    expect(left(2026, status, 37_000, edge + 37)).toBe("36998");
    expect(left(2026, status, 37_000, edge + 37_000)).toBe("35000");
    expect(left(2026, status, 37_000, edge + 37_001)).toBe("35000");
    expect(left(2026, status, 0, edge + 37_001)).toBe("0");
  });

  it("is exactly two thirty-sevenths, not 5.4%", () => {
    expect(left(2026, "single", 74_000, 740_600)).toBe("70000");
    expect(Number(left(2026, "single", 100_000, 5_000_000))).toBeCloseTo(94_594.594594, 5);
  });

  it.each([2022, 2023, 2024, 2025])("is not in %i", (taxYear) => {
    expect(left(taxYear, "single", 100_000, 5_000_000)).toBe("100000");
  });
});

describe("any deductions", () => {
  it("keep at least 35/37 and never grow", () => {
    fc.assert(
      fc.property(
        years,
        statuses,
        dollarsUpTo(300_000),
        dollarsUpTo(2_000_000),
        (taxYear, status, deductions, income) => {
          const kept = limitedItemizedDeductions(taxYear, status, deductions, income, rulebook);
          expect(kept.lessThanOrEqualTo(deductions)).toBe(true);
          expect(kept.times(37).plus("0.000001").greaterThanOrEqualTo(deductions.times(35))).toBe(
            true
          );
        }
      ),
      RUNS
    );
  });
});
