import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { businessIncomeDeduction } from "../../../src/calculation/liability/businessIncomeDeduction";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/liability/business-income.json";
import { dollarsUpTo, HELD, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

interface Business {
  readonly income?: number | string;
  readonly taxable?: number | string;
  readonly preferentialIncome?: number | string;
  readonly wages?: number | string;
  readonly property?: number;
  readonly service?: boolean;
}
const deduction = (taxYear: number, status: string, given: Business): number =>
  businessIncomeDeduction(
    {
      taxYear: year(taxYear),
      status: statusOf(status),
      qualifiedIncome: usd(given.income ?? 100_000),
      taxableIncome: usd(given.taxable ?? 100_000),
      preferentialIncome: usd(given.preferentialIncome ?? 0),
      wages: usd(given.wages ?? 0),
      property: usd(given.property ?? 0),
      specifiedService: given.service ?? false,
    },
    rulebook
  ).toNumber();

describe("the examples of the regulation", () => {
  it.each(published.cases)("$case ($source.document)", (one) => {
    const given = {
      income: one.qualifiedIncome,
      taxable: one.taxableIncome,
      preferentialIncome: one.preferentialIncome,
      wages: one.wages,
    };
    for (const taxYear of [2022, 2023, 2024, 2025]) {
      expect(deduction(taxYear, "single", given)).toBe(Number(one.deduction));
    }
    // from 2026 a business of 1,000 and more has 400 at least, 26 U.S.C. 199A(i)
    expect(deduction(2026, "single", given)).toBe(Math.max(400, Number(one.deduction)));
  });
});

/**
 * Threshold of others, joint, separate; width of others and joint. Rev. Proc. 2021-45 and 2022-38 sec. 3.27 from memory, 2023-34 sec. 3.27
 * and 2024-40 sec. 2.27 as reported, 2025-32 sec. 4.26; widths of 2026: Pub. L. 119-21 sec. 70105.
 */
const FIGURES: Readonly<Record<number, readonly number[]>> = {
  2022: [170_050, 340_100, 170_050, 50_000, 100_000],
  2023: [182_100, 364_200, 182_100, 50_000, 100_000],
  2024: [191_950, 383_900, 191_950, 50_000, 100_000],
  2025: [197_300, 394_600, 197_300, 50_000, 100_000],
  2026: [201_750, 403_500, 201_775, 75_000, 150_000],
};
const groups = HELD.flatMap((taxYear) =>
  ["single", "head", "survivor", "separate", "joint"].map((status) => {
    const [others = 0, joint = 0, separate = 0, narrow = 0, wide = 0] = FIGURES[taxYear] ?? [];
    const threshold = status === "joint" ? joint : status === "separate" ? separate : others;
    const width = status === "joint" ? wide : narrow;
    return { taxYear, status, threshold, width, least: taxYear === 2026 ? 400 : 0 };
  })
);

// 26 U.S.C. 199A(b)(2), (3), (d)(3). 100,000 of qualified income: 20,000 without limits.
describe.each(groups)("$taxYear $status", ({ taxYear, status, threshold, width, least }) => {
  const at = (over: number, given: Business = {}): number =>
    deduction(taxYear, status, { taxable: threshold + over, ...given });

  it("without wages the deduction goes over the width of the phase-in", () => {
    expect(at(-1)).toBe(20_000);
    expect(at(0)).toBe(20_000);
    expect(at(width / 100)).toBeCloseTo(19_800, 6);
    expect(at(width / 2)).toBe(10_000);
    expect(at(width * 0.97)).toBeCloseTo(600, 6);
    expect(at(width)).toBe(least);
    expect(at(width * 10)).toBe(least);
  });

  it("the limit is half of wages, or a quarter with 2.5% of property", () => {
    expect(at(width, { wages: 30_000 })).toBe(15_000);
    expect(at(width, { wages: 20_000, property: 300_000 })).toBe(12_500);
    expect(at(width, { property: 400_000 })).toBe(10_000);
    expect(at(width, { wages: 90_000 })).toBe(20_000);
    expect(at(width / 2, { wages: 30_000 })).toBe(17_500);
  });

  it("a specified service business loses its share of everything", () => {
    expect(at(0, { service: true })).toBe(20_000);
    expect(at(width / 2, { service: true, wages: 40_000 })).toBe(10_000);
    expect(at(width / 2, { service: true })).toBe(5_000);
    expect(at(width / 2, { service: true, wages: 20_000 })).toBe(7_500);
  });

  // 26 U.S.C. 199A(d)(1)(A), (i)(2): beyond the phase-in it is no qualified business, so there is no least deduction for it either.
  it("a specified service business beyond the phase-in has nothing, whatever its wages", () => {
    expect(at(width, { service: true, wages: 900_000 })).toBe(0);
  });
});

describe("within taxable income", () => {
  it("20% of it without gains is the most", () => {
    expect(deduction(2025, "single", { income: 100_000, taxable: 60_000 })).toBe(12_000);
    expect(deduction(2025, "single", { taxable: 60_000, preferentialIncome: 20_000 })).toBe(8_000);
    expect(deduction(2025, "single", { taxable: 60_000, preferentialIncome: 70_000 })).toBe(0);
  });

  it("a loss gives nothing", () => {
    for (const taxYear of HELD) expect(deduction(taxYear, "single", { income: -5_000 })).toBe(0);
  });
});

// 26 U.S.C. 199A(i), Pub. L. 119-21 sec. 70105; Rev. Proc. 2025-32 sec. 4.26.
describe("the least deduction of 2026", () => {
  it.each([
    [999, 199.8],
    [1_000, 400],
    [1_999, 400],
    [2_000, 400],
    [2_001, 400.2],
  ])("on %d of qualified income is %d", (income, least) => {
    expect(deduction(2026, "single", { income })).toBe(least);
    expect(deduction(2025, "single", { income })).toBeCloseTo(income / 5, 6);
  });

  it("counts a service business only as far as the phase-in leaves it", () => {
    const half = { taxable: 201_750 + 37_500, service: true };
    expect(deduction(2026, "single", { ...half, income: 1_998 })).toBeCloseTo(99.9, 6);
    expect(deduction(2026, "single", { ...half, income: 2_000 })).toBe(400);
  });
});

describe("any business", () => {
  it("deducts at most 20% of its income but for the least, no less for more wages", () => {
    fc.assert(
      fc.property(
        years,
        statuses,
        dollarsUpTo(400_000),
        dollarsUpTo(700_000),
        dollarsUpTo(90_000),
        (taxYear, status, qualifiedIncome, taxableIncome, wages) => {
          const zero = usd(0);
          const of = (paid: typeof wages) =>
            businessIncomeDeduction(
              {
                taxYear,
                status,
                qualifiedIncome,
                taxableIncome,
                preferentialIncome: zero,
                wages: paid,
                property: zero,
                specifiedService: false,
              },
              rulebook
            );
          const most = Math.max(400, qualifiedIncome.div(5).toNumber());
          expect(of(wages).toNumber()).toBeLessThanOrEqual(most);
          expect(of(wages.plus(1)).greaterThanOrEqualTo(of(wages))).toBe(true);
        }
      ),
      RUNS
    );
  });
});
