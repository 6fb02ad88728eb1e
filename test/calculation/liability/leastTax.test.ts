import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { grossIncome } from "../../../src/calculation/liability/grossIncome";
import { leastTax } from "../../../src/calculation/liability/leastTax";
import { taxableIncome } from "../../../src/calculation/liability/taxableIncome";
import { taxLessCredits } from "../../../src/calculation/liability/taxLessCredits";
import type { ReturnItems } from "../../../src/calculation/liability/returnItems";
import { rulebook } from "../../../src/rules/rulebook";
import {
  dollarsUpTo,
  known,
  RUNS,
  statuses,
  statusOf,
  year,
  years,
  type Written,
} from "./givenTax";

const least = (taxYear: number, status: string, written: Written) => {
  const [of, who, items] = [year(taxYear), statusOf(status), known(written)];
  return leastTax(of, who, items, grossIncome(of, who, items, rulebook), rulebook);
};
/** The line of the deduction, and the tax. */
const chosen = (...given: Parameters<typeof least>) => {
  const { lines, amount } = least(...given);
  return [lines[0]?.what, lines[0]?.amount.toNumber(), amount.toNumber()];
};

// 26 U.S.C. 63(b), (e): itemizing is an election.
describe("the deductions with the least tax", () => {
  it("are the larger ones where only the income tax counts, the standard one where they are equal", () => {
    expect(chosen(2025, "single", { wages: 200_000, itemizedDeductions: 15_750 })).toEqual([
      "Less standard deduction",
      -15_750,
      37_067,
    ]);
    expect(chosen(2025, "single", { wages: 200_000, itemizedDeductions: 15_800 })).toEqual([
      "Less itemized deductions",
      -15_800,
      37_055,
    ]);
  });

  // The Tax Table has one tax for 34,250 and 34,249.
  it("are the larger ones where the tax is the same", () => {
    const given = (itemizedDeductions: number) => ({ wages: 50_010, itemizedDeductions });
    expect(chosen(2025, "single", given(15_751)).slice(0, 2)).toEqual([
      "Less itemized deductions",
      -15_751,
    ]);
    expect(chosen(2025, "single", given(15_749)).slice(0, 2)).toEqual([
      "Less standard deduction",
      -15_750,
    ]);
    expect(chosen(2025, "single", { wages: 0, itemizedDeductions: 99_000 })[0]).toBe(
      "Less itemized deductions"
    );
  });

  // 26 U.S.C. 56(b)(1)(D): the minimum tax adds the standard deduction back, but not gifts or mortgage interest.
  it("are the itemized ones below the standard deduction where the minimum tax is due, and say so", () => {
    const given = { wages: 200_000, minimumTaxItems: 400_000, itemizedDeductions: 14_000 };
    expect(chosen(2025, "single", given)).toEqual([
      "Less itemized deductions (smaller than the deductions without itemizing, but total tax is lower)",
      -14_000,
      134_630,
    ]);
    const remarks = least(2025, "single", given).lines.filter(({ what }) => what.includes("("));
    expect(remarks.length).toBe(1);
  });

  // 584,250 less 88,100 at 28% less 4,782
  it("are the itemized ones where they equal the standard deduction and the minimum tax is due", () => {
    const given = { wages: 200_000, minimumTaxItems: 400_000, itemizedDeductions: 15_750 };
    expect(chosen(2025, "single", given)).toEqual(["Less itemized deductions", -15_750, 134_140]);
  });

  // 26 U.S.C. 170(p) and 56(b)(1)(A)(ii): the minimum tax adds back state taxes, but not cash gifts without itemizing.
  it("are the standard one below the itemized ones where those are state taxes, and say so", () => {
    const given = {
      wages: 200_000,
      minimumTaxItems: 200_000,
      stateAndLocalTaxes: 18_000,
      charitableCash: 1_000,
    };
    // 399,000 less 90,100 at 28% less 4,890 is 81,602, and 81,882 without the gifts
    expect(chosen(2026, "single", given)).toEqual([
      "Less standard deduction (smaller than the itemized deductions, but total tax is lower)",
      -16_100,
      81_602,
    ]);
  });

  // 26 U.S.C. 63(b)(4), 170(p): from 2026 cash gifts come on top of the standard deduction.
  it("count cash gifts without itemizing", () => {
    const given = { wages: 200_000, itemizedDeductions: 16_500, charitableCash: 1_000 };
    expect(chosen(2026, "single", given).slice(0, 2)).toEqual(["Less standard deduction", -16_100]);
    expect(chosen(2026, "single", { ...given, charitableCash: 300 }).slice(0, 2)).toEqual([
      "Less itemized deductions",
      -16_500,
    ]);
  });

  it("are the standard one where nothing is itemized", () => {
    expect(chosen(2025, "single", { wages: 10_000, minimumTaxItems: 600_000 })[0]).toBe(
      "Less standard deduction"
    );
    // Itemized deductions of 0 would raise the business income deduction by 20% of 15,750, which the minimum tax allows too.
    const given = { businessProfit: 500_000, businessWages: 600_000, minimumTaxItems: 900_000 };
    expect(chosen(2025, "single", given)[0]).toBe("Less standard deduction");
    expect(chosen(2025, "single", { ...given, itemizedDeductions: 0.4 })[0]).toBe(
      "Less standard deduction"
    );
    expect(least(2025, "single", { ...given, itemizedDeductions: 1 }).lines[0]?.what).toMatch(
      /^Less itemized deductions \(smaller/
    );
  });
});

describe("any return", () => {
  const written = fc.record({
    wages: dollarsUpTo(1_500_000),
    longTermGain: dollarsUpTo(400_000),
    minimumTaxItems: dollarsUpTo(500_000),
    itemizedDeductions: dollarsUpTo(60_000),
    stateAndLocalTaxes: dollarsUpTo(50_000),
    charitableCash: dollarsUpTo(3_000),
    credits: dollarsUpTo(5_000),
  });

  it("owes the lesser of the taxes with either deduction", () => {
    fc.assert(
      fc.property(years, statuses, written, (taxYear, status, items: ReturnItems) => {
        const gross = grossIncome(taxYear, status, items, rulebook);
        const taxes = (["standard", "itemized"] as const).map((choice) => {
          const taxable = taxableIncome(taxYear, status, items, gross, choice, rulebook);
          return taxLessCredits(taxYear, status, items, gross, taxable, rulebook).amount.toNumber();
        });
        const { amount } = leastTax(taxYear, status, items, gross, rulebook);
        expect(amount.toNumber()).toBe(Math.min(...taxes));
      }),
      RUNS
    );
  });
});
