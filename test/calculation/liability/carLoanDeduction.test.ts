import { describe, expect, it } from "vitest";
import { carLoanDeduction } from "../../../src/calculation/liability/carLoanDeduction";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/liability/temporary-deductions.json";
import { statusOf, usd, year } from "./givenTax";

const deduction = (
  taxYear: number,
  status: string,
  interest: string | number,
  income: string | number
): number =>
  carLoanDeduction(
    year(taxYear),
    statusOf(status),
    usd(interest),
    usd(income),
    rulebook
  ).toNumber();

const LAW_YEARS = [2025, 2026];
const isCarLoan = (one: { readonly deduction: string }): boolean => one.deduction === "carLoan";

describe("as published", () => {
  it.each(published.steps.filter(isCarLoan))("$case ($source.origin)", (one) => {
    const income = usd(one.thousandsOver).times(1_000).plus(100_000).toString();
    for (const taxYear of LAW_YEARS) {
      expect(deduction(taxYear, "single", 5_000, income)).toBe(5_000 - one.steps * 200);
    }
  });

  it.each(published.left.filter(isCarLoan))("$case ($source.origin)", (one) => {
    for (const taxYear of LAW_YEARS) {
      expect(deduction(taxYear, one.status, one.amount, one.income)).toBe(Number(one.left));
    }
  });
});

// 26 U.S.C. 163(h)(4)(C): at most 10,000; 200 less for each 1,000 or part of it above 200,000 on a joint return, 100,000 on any other.
describe("cap and threshold", () => {
  it.each([
    ["single", 100_000],
    ["head", 100_000],
    ["survivor", 100_000],
    ["separate", 100_000],
    ["joint", 200_000],
  ])("of %s: 10,000, less above %d, a part of a thousand counting whole", (status, threshold) => {
    for (const taxYear of LAW_YEARS) {
      expect(deduction(taxYear, status, 9_999, 0)).toBe(9_999);
      expect(deduction(taxYear, status, 10_001, 0)).toBe(10_000);
      const of = (over: number): number => deduction(taxYear, status, 30_000, threshold + over);
      expect([0, 1, 1_000, 1_001, 2_000].map((over) => 10_000 - of(over))).toEqual([
        0, 200, 200, 400, 400,
      ]);
      expect(of(49_000)).toBe(200);
      expect(of(49_001)).toBe(0);
      expect(of(90_000)).toBe(0);
    }
  });

  it("nobody has it before 2025", () => {
    for (const taxYear of [2022, 2023, 2024])
      expect(deduction(taxYear, "single", 5_000, 0)).toBe(0);
  });
});
