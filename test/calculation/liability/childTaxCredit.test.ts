import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { childTaxCredit } from "../../../src/calculation/liability/childTaxCredit";
import { rulebook } from "../../../src/rules/rulebook";
import { dollarsUpTo, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

const credit = (
  taxYear: number,
  status: string,
  children: number,
  others: number,
  income: string | number
): number =>
  childTaxCredit(
    year(taxYear),
    statusOf(status),
    children,
    others,
    usd(income),
    rulebook
  ).toNumber();

describe("the credit of a year", () => {
  // Schedule 8812 of 2022 and 2023 and Rev. Proc. 2023-34 sec. 3.05 in transcriptions; Pub. L. 119-21 sec. 70104; Rev. Proc. 2025-32 sec. 4.05.
  it.each([
    [2022, 2_000],
    [2023, 2_000],
    [2024, 2_000],
    [2025, 2_200],
    [2026, 2_200],
  ])("%i is %d a child and 500 for anyone else", (taxYear, child) => {
    expect(credit(taxYear, "single", 1, 0, 0)).toBe(child);
    expect(credit(taxYear, "single", 3, 0, 0)).toBe(3 * child);
    expect(credit(taxYear, "single", 0, 1, 0)).toBe(500);
    expect(credit(taxYear, "single", 2, 1, 0)).toBe(2 * child + 500);
    expect(credit(taxYear, "single", 0, 0, 0)).toBe(0);
    expect(credit(taxYear, "joint", 1, 0, 400_000)).toBe(child);
    expect(credit(taxYear, "joint", 1, 0, "400000.01")).toBe(child - 50);
    expect(credit(taxYear, "joint", 1, 0, 402_000)).toBe(child - 100);
  });
});

// 26 U.S.C. 24(b)(1), (h)(3): 50 for each 1,000 or part of it above 400,000 on a joint return, 200,000 on any other.
describe("what income takes off", () => {
  it.each([
    ["single", 200_000],
    ["head", 200_000],
    ["survivor", 200_000],
    ["separate", 200_000],
    ["joint", 400_000],
  ])("of %s begins above %d", (status, threshold) => {
    for (const taxYear of [2022, 2023, 2024, 2025, 2026]) {
      const at = (over: number): number =>
        credit(taxYear, status, 2, 0, threshold) - credit(taxYear, status, 2, 0, threshold + over);
      expect([-1, 0, 1, 999, 1_000, 1_001, 2_000, 2_001].map(at)).toEqual([
        0, 0, 50, 50, 50, 100, 100, 150,
      ]);
    }
  });

  it("leaves nothing beyond 40,000 of excess for one child, never less", () => {
    expect(credit(2024, "single", 1, 0, 239_000)).toBe(50);
    expect(credit(2024, "single", 1, 0, "239000.01")).toBe(0);
    expect(credit(2024, "single", 1, 0, 900_000)).toBe(0);
  });

  it("is nothing for a loss", () => {
    expect(credit(2025, "single", 1, 0, -50_000)).toBe(2_200);
  });
});

describe("any family", () => {
  it("has no more credit for more income, and no less for one more child", () => {
    const few = fc.integer({ min: 0, max: 6 });
    fc.assert(
      fc.property(
        years,
        statuses,
        few,
        few,
        dollarsUpTo(700_000),
        (taxYear, status, children, others, income) => {
          const of = (more: number, moreIncome: number) =>
            childTaxCredit(
              taxYear,
              status,
              children + more,
              others,
              income.plus(moreIncome),
              rulebook
            );
          expect(of(0, 0).isNegative()).toBe(false);
          expect(of(0, 1).lessThanOrEqualTo(of(0, 0))).toBe(true);
          expect(of(1, 0).greaterThanOrEqualTo(of(0, 0))).toBe(true);
        }
      ),
      RUNS
    );
  });
});
