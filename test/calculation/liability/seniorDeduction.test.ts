import { describe, expect, it } from "vitest";
import { seniorDeduction } from "../../../src/calculation/liability/seniorDeduction";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/liability/temporary-deductions.json";
import { statusOf, usd, year } from "./givenTax";

const deduction = (
  taxYear: number,
  status: string,
  persons: number,
  income: string | number
): number =>
  seniorDeduction(year(taxYear), statusOf(status), persons, usd(income), rulebook).toNumber();

const LAW_YEARS = [2025, 2026];

describe("Schedule 1-A, part V", () => {
  it.each(published.left.filter((one) => one.deduction === "senior"))(
    "$case ($source.origin)",
    ({ status, persons, income, left }) => {
      for (const taxYear of LAW_YEARS) {
        expect(deduction(taxYear, status, persons, income)).toBe(Number(left));
      }
    }
  );
});

// 26 U.S.C. 151(d)(5)(C): 6,000 each, less 6% of the income above 150,000 on a joint return, 75,000 on any other; never separate.
describe("6,000 for each", () => {
  it.each([
    ["single", 75_000],
    ["head", 75_000],
    ["survivor", 75_000],
    ["joint", 150_000],
  ])("of %s shrinks above %d and is gone 100,000 above it", (status, threshold) => {
    for (const taxYear of LAW_YEARS) {
      const of = (over: number): number => deduction(taxYear, status, 1, threshold + over);
      expect([-75_000, 0, 1, 100, 50_000, 99_999, 100_000, 900_000].map(of)).toEqual([
        6_000, 6_000, 5_999.94, 5_994, 3_000, 0.06, 0, 0,
      ]);
    }
  });

  it("two persons lose it twice", () => {
    expect(deduction(2025, "joint", 2, 150_000)).toBe(12_000);
    expect(deduction(2025, "joint", 2, 151_000)).toBe(11_880);
    expect(deduction(2025, "joint", 2, 250_000)).toBe(0);
  });

  it("nobody has it who is not 65, files separately, or files for a year before 2025", () => {
    expect(deduction(2025, "joint", 0, 100_000)).toBe(0);
    expect(deduction(2025, "separate", 1, 0)).toBe(0);
    expect(deduction(2026, "separate", 1, 0)).toBe(0);
    for (const taxYear of [2022, 2023, 2024]) expect(deduction(taxYear, "single", 1, 0)).toBe(0);
  });
});
