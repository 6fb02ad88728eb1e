import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { standardDeduction } from "../../../src/calculation/liability/standardDeduction";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/liability/standard-deduction.json";
import { dollarsUpTo, HELD, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

const deduction = (
  taxYear: number,
  status: string,
  additions = 0,
  earned?: string | number
): number =>
  standardDeduction(
    year(taxYear),
    statusOf(status),
    additions,
    earned === undefined ? undefined : usd(earned),
    rulebook
  ).toNumber();

/**
 * Single, joint, head; addition of the unmarried and of the married; floor of a dependent and what is added to earned income. Rev. Proc.
 * 2021-45 sec. 3.15, 2022-38 sec. 3.15, 2023-34 sec. 3.15, 2024-40 sec. 2.15 with 2025-32 sec. 3.01, 2025-32 sec. 4.14. Read in the official
 * text for 2026, in transcriptions before; the dependent's figures of 2023 from memory.
 */
const AMOUNTS: Readonly<Record<number, readonly number[]>> = {
  2022: [12950, 25900, 19400, 1750, 1400, 1150, 400],
  2023: [13850, 27700, 20800, 1850, 1500, 1250, 400],
  2024: [14600, 29200, 21900, 1950, 1550, 1300, 450],
  2025: [15750, 31500, 23625, 2000, 1600, 1350, 450],
  2026: [16100, 32200, 24150, 2050, 1650, 1350, 450],
};

describe("the charts for 65 or older or blind", () => {
  it.each(published.cases)("$case ($source.origin)", (one) => {
    expect(deduction(one.taxYear, one.status, one.additions)).toBe(Number(one.deduction));
  });
});

describe.each(HELD)("in %i", (taxYear) => {
  const [single = 0, joint = 0, head = 0, unmarried = 0, married = 0, floor = 0, plus = 0] =
    AMOUNTS[taxYear] ?? [];

  it("each status has its amount, a surviving spouse the joint one", () => {
    expect(deduction(taxYear, "single")).toBe(single);
    expect(deduction(taxYear, "separate")).toBe(single);
    expect(deduction(taxYear, "joint")).toBe(joint);
    expect(deduction(taxYear, "survivor")).toBe(joint);
    expect(deduction(taxYear, "head")).toBe(head);
  });

  // 26 U.S.C. 63(f)(3): the larger addition only for those neither married nor a surviving spouse.
  it.each([1, 2])(
    "%i additions are the smaller ones for the married and a surviving spouse",
    (n) => {
      expect(deduction(taxYear, "single", n) - single).toBe(n * unmarried);
      expect(deduction(taxYear, "head", n) - head).toBe(n * unmarried);
      expect(deduction(taxYear, "joint", n) - joint).toBe(n * married);
      expect(deduction(taxYear, "separate", n) - single).toBe(n * married);
      expect(deduction(taxYear, "survivor", n) - joint).toBe(n * married);
    }
  );

  // 26 U.S.C. 63(c)(5): the greater of a floor and earned income with an addition, within the regular amount.
  it("a dependent has the floor, earned income and a little more, or the regular amount", () => {
    expect(deduction(taxYear, "single", 0, 0)).toBe(floor);
    expect(deduction(taxYear, "single", 0, floor - plus)).toBe(floor);
    expect(deduction(taxYear, "single", 0, floor - plus + 1)).toBe(floor + 1);
    expect(deduction(taxYear, "single", 0, single - plus)).toBe(single);
    expect(deduction(taxYear, "single", 0, single)).toBe(single);
    expect(deduction(taxYear, "single", 1, 0)).toBe(floor + unmarried);
  });
});

describe("any dependent", () => {
  it("has no more than anyone else, and no less for more earned income", () => {
    fc.assert(
      fc.property(years, statuses, dollarsUpTo(50_000), (taxYear, status, earned) => {
        const of = (amount: typeof earned | undefined) =>
          standardDeduction(taxYear, status, 1, amount, rulebook);
        expect(of(earned).lessThanOrEqualTo(of(undefined))).toBe(true);
        expect(of(earned.plus(1)).greaterThanOrEqualTo(of(earned))).toBe(true);
      }),
      RUNS
    );
  });
});
