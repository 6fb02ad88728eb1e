import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stateAndLocalDeduction } from "../../../src/calculation/liability/stateAndLocalDeduction";
import { rulebook } from "../../../src/rules/rulebook";
import { dollarsUpTo, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

const deduction = (
  taxYear: number,
  status: string,
  paid: string | number,
  income: string | number
): string =>
  stateAndLocalDeduction(
    year(taxYear),
    statusOf(status),
    usd(paid),
    usd(income),
    rulebook
  ).toString();

// 26 U.S.C. 164(b)(6) before Pub. L. 119-21, from memory: 10,000, half of it separate, whatever the income.
describe("before 2025", () => {
  it.each([2022, 2023, 2024])("%i the cap is 10,000, half of it separate", (taxYear) => {
    for (const status of ["single", "head", "joint", "survivor"]) {
      expect(deduction(taxYear, status, 9_999, 50_000)).toBe("9999");
      expect(deduction(taxYear, status, 10_000, 50_000)).toBe("10000");
      expect(deduction(taxYear, status, 60_000, 50_000)).toBe("10000");
      expect(deduction(taxYear, status, 60_000, 5_000_000)).toBe("10000");
    }
    expect(deduction(taxYear, "separate", 4_999, 50_000)).toBe("4999");
    expect(deduction(taxYear, "separate", 60_000, 50_000)).toBe("5000");
    expect(deduction(taxYear, "separate", 60_000, 5_000_000)).toBe("5000");
  });
});

/**
 * 26 U.S.C. 164(b)(6), (7) as amended by Pub. L. 119-21 sec. 70120: the cap less 30% of the income above the threshold, not below 10,000;
 * every figure half for a separate filer.
 */
describe.each([
  [2025, 40_000, 500_000],
  [2026, 40_400, 505_000],
])("in %i", (taxYear, cap, threshold) => {
  const gone = threshold + (cap - 10_000) / 0.3;

  it.each([
    ["single", 1],
    ["joint", 1],
    ["head", 1],
    ["survivor", 1],
    ["separate", 2],
  ])("the cap of %s shrinks to its floor", (status, part) => {
    const of = (income: number, paid = 60_000): string =>
      deduction(taxYear, status, paid, income / part);
    const shown = (amount: number): string => usd(amount).div(part).toString();
    expect(of(0, cap / part - 1)).toBe(usd(cap).div(part).minus(1).toString());
    expect(of(threshold)).toBe(shown(cap));
    expect(of(threshold + 20)).toBe(shown(cap - 6));
    expect(of(threshold + 50_000)).toBe(shown(cap - 15_000));
    expect(of(Math.floor(gone) - 20)).not.toBe(shown(10_000));
    expect(of(Math.ceil(gone))).toBe(shown(10_000));
    expect(of(5_000_000)).toBe(shown(10_000));
    expect(of(5_000_000, 3_000)).toBe("3000");
  });
});

describe("any taxes", () => {
  it("count at most as paid, no more for more income, between floor and cap", () => {
    fc.assert(
      fc.property(
        years,
        statuses,
        dollarsUpTo(90_000),
        dollarsUpTo(900_000),
        (taxYear, status, paid, income) => {
          const of = (more: number) =>
            stateAndLocalDeduction(taxYear, status, paid, income.plus(more), rulebook);
          expect(of(0).lessThanOrEqualTo(paid)).toBe(true);
          expect(of(1).lessThanOrEqualTo(of(0))).toBe(true);
          if (paid.greaterThanOrEqualTo(5_000)) {
            expect(of(0).greaterThanOrEqualTo(5_000)).toBe(true);
          }
        }
      ),
      RUNS
    );
  });
});
