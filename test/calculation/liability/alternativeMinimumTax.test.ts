import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { alternativeMinimumTax } from "../../../src/calculation/liability/alternativeMinimumTax";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/liability/minimum-tax-exemption.json";
import { dollarsUpTo, HELD, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

const tax = (
  taxYear: number,
  status: string,
  taxableIncome: number,
  amtAdjustments: number,
  preferentialIncome = 0
): number =>
  alternativeMinimumTax(
    {
      taxYear: year(taxYear),
      status: statusOf(status),
      taxableIncome: usd(taxableIncome),
      amtAdjustments: usd(amtAdjustments),
      preferentialIncome: usd(preferentialIncome),
    },
    rulebook
  ).toNumber();

/** The tentative minimum tax: everything is added back, so that no regular tax is due. */
const tentative = (taxYear: number, status: string, income: number): number =>
  tax(taxYear, status, 0, income);

/**
 * Exemption, where it begins to shrink, where 28% begins, for each group; and how much it shrinks. Rev. Proc. 2021-45 sec. 3.11, 2022-38
 * sec. 3.11, 2023-34 sec. 3.11, 2024-40 sec. 2.11, 2025-32 sec. 4.10 and Pub. L. 119-21 sec. 70107, read as quoted elsewhere.
 */
const FIGURES: Readonly<
  Record<
    number,
    { readonly rate: number; readonly of: Readonly<Record<string, readonly number[]>> }
  >
> = {
  2022: {
    rate: 0.25,
    of: {
      single: [75_900, 539_900, 206_100],
      joint: [118_100, 1_079_800, 206_100],
      separate: [59_050, 539_900, 103_050],
    },
  },
  2023: {
    rate: 0.25,
    of: {
      single: [81_300, 578_150, 220_700],
      joint: [126_500, 1_156_300, 220_700],
      separate: [63_250, 578_150, 110_350],
    },
  },
  2024: {
    rate: 0.25,
    of: {
      single: [85_700, 609_350, 232_600],
      joint: [133_300, 1_218_700, 232_600],
      separate: [66_650, 609_350, 116_300],
    },
  },
  2025: {
    rate: 0.25,
    of: {
      single: [88_100, 626_350, 239_100],
      joint: [137_000, 1_252_700, 239_100],
      separate: [68_500, 626_350, 119_550],
    },
  },
  2026: {
    rate: 0.5,
    of: {
      single: [90_100, 500_000, 244_500],
      joint: [140_200, 1_000_000, 244_500],
      separate: [70_100, 500_000, 122_250],
    },
  },
};
const SAME_AS: Readonly<Record<string, string>> = { head: "single", survivor: "joint" };
const groups = HELD.flatMap((taxYear) =>
  ["single", "head", "joint", "survivor", "separate"].map((status) => {
    const { rate = 0, of = {} } = FIGURES[taxYear] ?? {};
    const [exemption = 0, start = 0, edge = 0] = of[SAME_AS[status] ?? status] ?? [];
    return { taxYear, status, exemption, start, edge, rate };
  })
);

describe.each(groups)("$taxYear $status", ({ taxYear, status, exemption, start, edge, rate }) => {
  const at = (income: number): number => tentative(taxYear, status, income);
  const step = (income: number): number => at(income + 100) - at(income);

  it("nothing is due up to the exemption, 26% above it, 28% above the break", () => {
    expect(at(exemption - 100)).toBe(0);
    expect(at(exemption)).toBe(0);
    expect(step(exemption)).toBe(26);
    expect(step(exemption + edge - 100)).toBeCloseTo(26, 6);
    expect(step(exemption + edge)).toBeCloseTo(28, 6);
    expect(at(exemption + edge)).toBeCloseTo(0.26 * edge, 6);
  });

  it("the exemption shrinks from its threshold until it is gone", () => {
    const gone = start + exemption / rate;
    expect(step(start - 100)).toBeCloseTo(28, 6);
    expect(step(start)).toBeCloseTo(28 * (1 + rate), 6);
    expect(step(gone - 100)).toBeCloseTo(28 * (1 + rate), 6);
    expect(at(gone)).toBeCloseTo(0.28 * gone - 0.02 * edge, 6);
    if (status !== "separate") expect(step(gone)).toBeCloseTo(28, 6);
  });
});

describe("where the exemption is gone, as printed", () => {
  it.each(published.cases)("$case ($source.origin)", ({ taxYear, status, goneAt, rate }) => {
    const at = (more: number): number => tentative(taxYear, status, Number(goneAt) + more);
    const edge = status === "separate" ? 122_250 : taxYear === 2024 ? 232_600 : 244_500;
    expect(at(0)).toBeCloseTo(0.28 * Number(goneAt) - 0.02 * edge, 6);
    expect(at(0) - at(-100)).toBeCloseTo(28 * (1 + Number(rate)), 6);
  });
});

// Instructions for Form 6251 (2024), line 4, in a transcription; 26 U.S.C. 55(d)(3): a separate filer adds 25% of what is above 875,950, at
// most 66,650, reached at 1,142,550.
describe("a separate filer whose exemption is gone", () => {
  it("adds income until it equals the exemption that the other spouse might take", () => {
    const at = (income: number): number => tentative(2024, "separate", income);
    const flat = (income: number): number => 0.28 * income - 0.02 * 116_300;
    expect(at(875_950)).toBeCloseTo(flat(875_950), 6);
    expect(at(876_950)).toBeCloseTo(flat(876_950 + 250), 6);
    expect(at(1_142_550)).toBeCloseTo(flat(1_142_550 + 66_650), 6);
    expect(at(1_500_000)).toBeCloseTo(flat(1_500_000 + 66_650), 6);
  });
});

// Form 6251 lines 1 to 40, single 2025.
describe("beside the regular tax", () => {
  it("is nothing for ordinary wages and the standard deduction", () => {
    expect(tax(2025, "single", 150_000, 15_750)).toBe(0);
    expect(tax(2025, "single", 0, 0)).toBe(0);
  });

  it("is what incentive stock options add", () => {
    // 350,000 less 88,100 is 261,900: 28% less 4,782 is 68,550. Regular on 134,250: 17,651 + 24% of 30,900 = 25,067.
    expect(tax(2025, "single", 134_250, 215_750)).toBe(43_483);
  });

  it("keeps the gain rates, so that a gain that takes the exemption away costs no 28%", () => {
    // Line 12: 215,750 less 88,100 = 127,650, all of it gain (line 13: 200,000). Line 23: 48,350; line 31: 15% of 79,300 = 11,895.
    // Regular on 200,000 of gain: 15% of 151,650 = 22,747.50.
    expect(tax(2025, "single", 200_000, 15_750, 200_000)).toBe(0);
    // Line 12: 1,000,000; line 13 the same, so line 17 is 0. Line 31: 72,757.50; line 34: 20% of 466,600 = 93,320; line 40: 166,077.50.
    // Regular on 984,250, the same gain: 72,757.50 + 20% of 450,850 = 162,927.50.
    expect(tax(2025, "single", 984_250, 15_750, 1_000_000)).toBe(3_150);
  });
});

describe("any return", () => {
  it("pays nothing or more, no less for more added back, at most 28% of it where the exemption stays", () => {
    fc.assert(
      fc.property(
        years,
        statuses,
        dollarsUpTo(400_000),
        dollarsUpTo(90_000),
        dollarsUpTo(400_000),
        (taxYear, status, taxableIncome, amtAdjustments, preferentialIncome) => {
          const of = (more: number) =>
            alternativeMinimumTax(
              {
                taxYear,
                status,
                taxableIncome,
                preferentialIncome,
                amtAdjustments: amtAdjustments.plus(more),
              },
              rulebook
            );
          expect(of(0).isNegative()).toBe(false);
          const step = of(100).minus(of(0)).toNumber();
          expect(step).toBeGreaterThanOrEqual(0);
          expect(step).toBeLessThanOrEqual(28.000001);
        }
      ),
      RUNS
    );
  });
});
