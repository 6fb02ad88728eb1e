import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { projectedTax } from "../../../src/calculation/liability/projectedTax";
import { rulebook } from "../../../src/rules/rulebook";
import { dollarsUpTo, RUNS, statuses, statusOf, usd, year } from "./givenTax";

interface Changed {
  readonly status?: string;
  readonly taxYear?: number;
  readonly priorYearTax?: number;
  readonly income?: number;
  readonly ordinary?: number;
  readonly businessProfit?: number;
  readonly gain?: number;
  readonly deductions?: number;
  readonly children?: number;
}
const projected = (given: Changed): number =>
  projectedTax(
    {
      taxYear: year(given.taxYear ?? 2025),
      status: statusOf(given.status ?? "single"),
      priorYearTax: usd(given.priorYearTax ?? 8_341),
      priorYearTaxableIncome: usd(given.income ?? 60_000),
      ordinary: usd(given.ordinary ?? 0),
      businessProfit: usd(given.businessProfit ?? 0),
      gain: usd(given.gain ?? 0),
      deductions: usd(given.deductions ?? 0),
      children: given.children ?? 0,
    },
    rulebook
  ).toNumber();

/**
 * Common practice, no source: last year's tax and the difference of two years' tax on the changed income. Single 2024 on 60,000: 5,426 +
 * 22% of (60,025 - 47,150), 8,259. The standard deduction rises by 1,150 to 2025, so that 58,850 is left: 5,578.50 + 22% of (58,875 -
 * 48,475), 7,867.
 */
describe("last year's total tax of 8,341 on 60,000, carried to 2025", () => {
  it.each<[string, Changed, number]>([
    ["nothing changed", {}, 7_949],
    // 68,850: 5,578.50 + 22% of (68,875 - 48,475) = 10,067
    ["10,000 more wages", { ordinary: 10_000 }, 10_149],
    // the same income, 10,000 of it gain at 15%: 7,867 + 1,500
    ["10,000 more gain", { gain: 10_000 }, 9_449],
    // 53,850: 5,578.50 + 22% of (53,875 - 48,475) = 6,767
    ["5,000 more deductions", { deductions: 5_000 }, 6_849],
    // 15.3% of 9,235 is 1,412.955; 68,143.52: 5,578.50 + 22% of (68,125 - 48,475) = 9,902
    ["10,000 more profit", { businessProfit: 10_000 }, 11_397],
    // 49,556.48: 5,578.50 + 22% of (49,575 - 48,475) = 5,821
    ["10,000 less profit", { businessProfit: -10_000 }, 4_490],
    ["a child more", { children: 1 }, 5_749],
    ["a child less", { children: -1 }, 10_149],
    ["10,000 less gain, as so much less income", { gain: -10_000 }, 5_749],
  ])("with %s", (_what, given, tax) => {
    expect(projected(given)).toBe(tax);
  });

  it("is never below zero", () => {
    expect(projected({ priorYearTax: 100, deductions: 90_000 })).toBe(0);
    expect(projected({ children: 9 })).toBe(0);
  });

  // Joint 2025 to 2026: the deduction rises by 700; 11,157 + 22% of 103,050 = 33,828 then, 11,600 + 22% of 98,500 = 33,270 now.
  it("uses the column of the status on both sides", () => {
    const given = { taxYear: 2026, income: 200_000, priorYearTax: 33_828 };
    expect(projected({ ...given, status: "joint" })).toBe(33_270);
    expect(projected({ ...given, status: "survivor" })).toBe(33_270);
  });
});

describe("any projection", () => {
  it("moves with last year's tax to the dollar, and never falls for more wages", () => {
    const taxYears = fc.integer({ min: 2023, max: 2026 }).map(year);
    fc.assert(
      fc.property(
        taxYears,
        statuses,
        dollarsUpTo(400_000),
        dollarsUpTo(90_000),
        (taxYear, status, priorYearTaxableIncome, ordinary) => {
          const zero = usd(0);
          const of = (priorYearTax: number, more: number) =>
            projectedTax(
              {
                taxYear,
                status,
                priorYearTaxableIncome,
                priorYearTax: usd(priorYearTax),
                ordinary: ordinary.plus(more),
                businessProfit: zero,
                gain: zero,
                deductions: zero,
                children: 0,
              },
              rulebook
            );
          expect(of(200_001, 0).minus(of(200_000, 0)).toNumber()).toBe(1);
          expect(of(200_000, 100).greaterThanOrEqualTo(of(200_000, 0))).toBe(true);
        }
      ),
      RUNS
    );
  });
});
