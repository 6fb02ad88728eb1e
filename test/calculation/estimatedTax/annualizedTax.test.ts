import { describe, expect, it } from "vitest";
import { annualizationPeriods } from "../../../src/calculation/estimatedTax/annualizationPeriods";
import {
  annualizedTax,
  type AnnualizedTax,
} from "../../../src/calculation/estimatedTax/annualizedTax";
import type { FilerType } from "../../../src/calculation/filerType";
import type { FilingStatus } from "../../../src/calculation/filingStatus";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/annualized-installments.json";
import { amountsOf } from "./givenPeriods";

interface Of {
  readonly year?: number;
  readonly months?: number;
  readonly status?: FilingStatus;
  readonly filerType?: FilerType;
}

function taxOf(amounts: Parameters<typeof amountsOf>[0], of: Of = {}): AnnualizedTax {
  const { year = 2025, months = 8, status = "single", filerType = "resident" } = of;
  const taxYear = calendarTaxYear(year);
  const period = annualizationPeriods(taxYear, "resident", rulebook).find(
    (one) => one.months === months
  );
  if (!period) throw new RangeError(`no period has ${String(months)} months`);
  return annualizedTax(taxYear, status, filerType, amountsOf(amounts), period, rulebook);
}

describe("annualized income as published", () => {
  it.each(published.regulationIncome)(
    "$case ($source.document)",
    ({ inputs: { income, deductions }, expected }) => {
      const found = taxOf({
        adjustedGrossIncome: income,
        businessIncomeDeduction: deductions,
        standardDeduction: "0",
      });
      expect(found.income.toString()).toBe(expected.annualized);
      expect(found.taxableIncome.toString()).toBe(expected.taxableIncome);
    }
  );
});

describe("the tax on annualized income", () => {
  // Rev. Proc. 2025-32, section 3.01: 15,750. Tax Table 2025, single, 44,250 to 44,300: computed from the brackets, 5,075.
  it("is that of the return on income less the standard deduction", () => {
    const found = taxOf({ adjustedGrossIncome: 40_000 });
    expect(found.income.toString()).toBe("60000");
    expect(found.chosen.toString()).toBe("15750");
    expect(found.taxableIncome.toString()).toBe("44250");
    expect(found.incomeTax.toString()).toBe("5075");
    expect(found.tax.toString()).toBe("5075");
  });

  it("takes the larger of annualized itemized and standard deduction", () => {
    // 10,501 x 1.5 = 15,751.50
    const itemized = taxOf({ adjustedGrossIncome: 40_000, itemizedDeductions: 10_501 });
    expect(itemized.itemized.toString()).toBe("15752");
    expect(itemized.chosen.toString()).toBe("15752");
    const standard = taxOf({ adjustedGrossIncome: 40_000, itemizedDeductions: 10_499 });
    expect(standard.chosen.toString()).toBe("15750");
  });

  // Form 2210, Schedule AI, lines 9, 16 and 18 are not multiplied.
  it("takes the business income deduction, other taxes, credits and a given tax as they are", () => {
    const found = taxOf({
      adjustedGrossIncome: 40_000,
      businessIncomeDeduction: 4_250,
      otherTaxes: 300,
      credits: 1_000,
      tax: "4000.50",
    });
    expect(found.deductions.toString()).toBe("20000");
    expect(found.taxableIncome.toString()).toBe("40000");
    expect(found.incomeTax.toString()).toBe("4001");
    expect(found.total.toString()).toBe("4301");
    expect(found.tax.toString()).toBe("3301");
  });

  it("is never below zero, nor is taxable income", () => {
    const found = taxOf({ adjustedGrossIncome: -10_000, otherTaxes: 100, credits: 5_000 });
    expect(found.income.toString()).toBe("-15000");
    expect(found.afterDeductions.toString()).toBe("-30750");
    expect(found.taxableIncome.toString()).toBe("0");
    expect(found.total.toString()).toBe("100");
    expect(found.tax.toString()).toBe("0");
  });

  it("adds self-employment tax in whole dollars", () => {
    // 10,000 x 1.5 x 15.3%
    const found = taxOf({ adjustedGrossIncome: 10_000, netEarnings: 10_001 });
    expect(found.selfEmployment.tax.toString()).toBe("2295.2295");
    expect(found.selfEmploymentTax.toString()).toBe("2295");
    expect(found.tax.toString()).toBe("2295");
  });

  // 26 U.S.C. 63(c)(6)(B); Form 2210, Schedule AI, line 7: Form 1040-NR filers enter 0, with an exception for some students.
  it("has no standard deduction for a nonresident, unless one is given", () => {
    const nonresident = { filerType: "nonresident" } as const;
    expect(taxOf({ adjustedGrossIncome: 40_000 }, nonresident).chosen.toString()).toBe("0");
    const given = { adjustedGrossIncome: 40_000, standardDeduction: 15_750 };
    expect(taxOf(given, nonresident).chosen.toString()).toBe("15750");
  });

  // 26 U.S.C. 68 from 2026: 2/37 of the excess over 640,600 (Rev. Proc. 2025-32), here (1,000,000 − 640,600) capped by 74,000.
  it("limits annualized itemized deductions from 2026", () => {
    const of = { year: 2026, months: 12 };
    const given = { adjustedGrossIncome: 1_000_000, itemizedDeductions: 74_000 };
    expect(taxOf(given, of).itemized.toString()).toBe("70000");
    const annualized = { adjustedGrossIncome: 250_000, itemizedDeductions: 18_500 };
    expect(taxOf(annualized, { ...of, months: 3 }).itemized.toString()).toBe("70000");
    expect(taxOf(given, { ...of, year: 2025 }).itemized.toString()).toBe("74000");
  });

  it("is refused for a year whose figures are not covered", () => {
    expect(() => taxOf({}, { year: 2021 })).toThrow(NotInTableError);
    expect(() => taxOf({}, { year: 2027 })).toThrow(NotInTableError);
  });
});
