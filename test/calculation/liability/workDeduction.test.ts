import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  workDeduction,
  type DeductiblePay,
} from "../../../src/calculation/liability/workDeduction";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/liability/temporary-deductions.json";
import { dollarsUpTo, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

const deduction = (
  pay: string,
  taxYear: number,
  status: string,
  amount: string | number,
  income: string | number
): number =>
  workDeduction(
    pay as DeductiblePay,
    year(taxYear),
    statusOf(status),
    usd(amount),
    usd(income),
    rulebook
  ).toNumber();

const LAW_YEARS = [2025, 2026];
const isWork = (one: { readonly deduction: string }): boolean =>
  one.deduction === "tips" || one.deduction === "overtime";

describe("as published", () => {
  it.each(published.reductions)("$case ($source.origin)", (one) => {
    for (const taxYear of LAW_YEARS) {
      expect(deduction(one.deduction, taxYear, one.status, 25_000, one.income)).toBe(
        25_000 - Number(one.reduction)
      );
    }
  });

  it.each(published.steps.filter(isWork))("$case ($source.origin)", (one) => {
    const income = usd(one.thousandsOver).times(1_000).plus(150_000).toString();
    for (const taxYear of LAW_YEARS) {
      expect(deduction(one.deduction, taxYear, "single", 5_000, income)).toBe(
        5_000 - one.steps * 100
      );
    }
  });

  it.each(published.left.filter(isWork))("$case ($source.origin)", (one) => {
    for (const taxYear of LAW_YEARS) {
      expect(deduction(one.deduction, taxYear, one.status, one.amount, one.income)).toBe(
        Number(one.left)
      );
    }
  });
});

// 26 U.S.C. 224(b), 225(b); Schedule 1-A lines 4 to 21: the cap of tips is one a return, that of overtime doubles on a joint return.
describe("caps and thresholds", () => {
  it.each([
    ["tips", "single", 25_000, 150_000],
    ["tips", "head", 25_000, 150_000],
    ["tips", "survivor", 25_000, 150_000],
    ["tips", "joint", 25_000, 300_000],
    ["overtime", "single", 12_500, 150_000],
    ["overtime", "head", 12_500, 150_000],
    ["overtime", "survivor", 12_500, 150_000],
    ["overtime", "joint", 25_000, 300_000],
  ])("%s of %s: at most %d, less above %d", (pay, status, cap, threshold) => {
    for (const taxYear of LAW_YEARS) {
      expect(deduction(pay, taxYear, status, cap - 1, 0)).toBe(cap - 1);
      expect(deduction(pay, taxYear, status, cap + 1, 0)).toBe(cap);
      const of = (over: number): number =>
        deduction(pay, taxYear, status, 90_000, threshold + over);
      expect([0, 999, 1_000, 1_999, 2_000].map((over) => cap - of(over))).toEqual([
        0, 0, 100, 100, 200,
      ]);
      expect(of(cap * 10 - 1)).toBe(100);
      expect(of(cap * 10)).toBe(0);
      expect(of(cap * 20)).toBe(0);
    }
  });

  it.each(["tips", "overtime"])(
    "%s count for nobody who files separately, nor before 2025",
    (pay) => {
      for (const taxYear of LAW_YEARS)
        expect(deduction(pay, taxYear, "separate", 5_000, 0)).toBe(0);
      for (const taxYear of [2022, 2023, 2024]) {
        for (const status of ["single", "joint"])
          expect(deduction(pay, taxYear, status, 5_000, 0)).toBe(0);
      }
    }
  );
});

describe("any pay", () => {
  it("counts at most as received, no more for more income, by whole hundreds", () => {
    const pays = fc.constantFrom<DeductiblePay>("tips", "overtime");
    fc.assert(
      fc.property(
        pays,
        years,
        statuses,
        dollarsUpTo(40_000),
        dollarsUpTo(900_000),
        (pay, taxYear, status, amount, income) => {
          const of = (more: number) =>
            workDeduction(pay, taxYear, status, amount, income.plus(more), rulebook);
          expect(of(0).lessThanOrEqualTo(amount)).toBe(true);
          expect([0, 100]).toContain(
            of(0).greaterThanOrEqualTo(100) ? of(0).minus(of(1)).toNumber() : 0
          );
        }
      ),
      RUNS
    );
  });
});
