import { describe, expect, it } from "vitest";
import { grossIncome } from "../../../src/calculation/liability/grossIncome";
import {
  taxableIncome,
  type DeductionChoice,
} from "../../../src/calculation/liability/taxableIncome";
import { rulebook } from "../../../src/rules/rulebook";
import { known, statusOf, year, type Written } from "./givenTax";

const taxable = (
  taxYear: number,
  status: string,
  written: Written,
  choice: DeductionChoice = "standard"
) => {
  const [of, who, items] = [year(taxYear), statusOf(status), known(written)];
  return taxableIncome(of, who, items, grossIncome(of, who, items, rulebook), choice, rulebook);
};
const amounts = (...given: Parameters<typeof taxable>) =>
  taxable(...given).lines.map(({ what, amount }) => [what, amount.toNumber()]);
const amtAdjustments = (...given: Parameters<typeof taxable>): number =>
  taxable(...given).amtAdjustments.toNumber();

describe("standard or itemized", () => {
  it("the one chosen comes off, however large", () => {
    const given = { wages: 50_000, itemizedDeductions: 15_751 };
    expect(amounts(2025, "single", given)).toEqual([
      ["Less standard deduction", -15_750],
      ["Taxable income", 34_250],
    ]);
    expect(amounts(2025, "single", given, "itemized")).toEqual([
      ["Less itemized deductions", -15_751],
      ["Taxable income", 34_249],
    ]);
  });

  it("is told with its amount, cash contributions without itemizing included", () => {
    const given = { wages: 50_000, itemizedDeductions: 9_000, charitableCash: 700, tips: 500 };
    expect(taxable(2026, "single", given).deduction.toNumber()).toBe(16_800);
    expect(taxable(2026, "single", given, "itemized").deduction.toNumber()).toBe(9_000);
  });

  // 26 U.S.C. 164(b)(6): 10,000 in 2024; 40,000 in 2025
  it("state and local taxes are itemized within their cap", () => {
    const given = { wages: 100_000, itemizedDeductions: 5_000, stateAndLocalTaxes: 30_000 };
    expect(amounts(2024, "single", given, "itemized")[0]).toEqual([
      "Less itemized deductions",
      -15_000,
    ]);
    expect(amounts(2025, "single", given, "itemized")[0]).toEqual([
      "Less itemized deductions",
      -35_000,
    ]);
  });

  it("a dependent and those who are aged or blind have their own standard deduction", () => {
    const first = (written: Written) => amounts(2025, "single", { wages: 50_000, ...written })[0];
    expect(first({ earnedIfDependent: 5_000 })).toEqual(["Less standard deduction", -5_450]);
    expect(first({ earnedIfDependent: 0 })).toEqual(["Less standard deduction", -1_350]);
    expect(first({ aged: 1, blind: 1 })).toEqual(["Less standard deduction", -19_750]);
  });

  it("is never below zero", () => {
    expect(amounts(2025, "single", { wages: 10_000 }).at(-1)).toEqual(["Taxable income", 0]);
    expect(amounts(2025, "single", { rentalIncome: -9_000 }).at(-1)).toEqual(["Taxable income", 0]);
  });
});

// Pub. L. 119-21 secs. 70103, 70201 to 70203, 70424.
describe("deductions beside either", () => {
  const given = {
    wages: 100_000,
    tips: 3_000,
    overtime: 2_000,
    carLoanInterest: 1_000,
    aged: 1,
    charitableCash: 1_500,
  };

  it("stand line by line from 2025, gifts of cash without itemizing from 2026", () => {
    // senior: 6,000 less 6% of 25,000
    const deductions = [
      ["Less senior deduction", -4_500],
      ["Less qualified tips", -3_000],
      ["Less qualified overtime", -2_000],
      ["Less car loan interest", -1_000],
    ];
    expect(amounts(2024, "single", given)).toEqual([
      ["Less standard deduction", -16_550],
      ["Taxable income", 83_450],
    ]);
    expect(amounts(2025, "single", given)).toEqual([
      ["Less standard deduction", -17_750],
      ...deductions,
      ["Taxable income", 71_750],
    ]);
    expect(amounts(2026, "single", given)).toEqual([
      ["Less standard deduction", -18_150],
      ["Less cash contributions to charity", -1_000],
      ...deductions,
      ["Taxable income", 70_350],
    ]);
  });

  const contributionsOf = (
    year: number,
    status: string,
    written: Written,
    choice?: DeductionChoice
  ) =>
    amounts(year, status, { wages: 90_000, ...written }, choice).filter(([what]) =>
      String(what).includes("cash contributions")
    );

  it("cash contributions count up to 2,000 on a joint return, and not beside itemized deductions", () => {
    const contributions = (status: string, written: Written) =>
      contributionsOf(2026, status, written);
    expect(contributions("joint", { charitableCash: 5_000 })[0]?.[1]).toBe(-2_000);
    expect(contributions("joint", { charitableCash: 1_999 })[0]?.[1]).toBe(-1_999);
    for (const status of ["single", "head", "separate", "survivor"]) {
      expect(contributions(status, { charitableCash: 5_000 })[0]?.[1]).toBe(-1_000);
    }
    const given = { charitableCash: 5_000, itemizedDeductions: 60_000 };
    expect(contributionsOf(2026, "joint", given, "itemized")).toEqual([]);
  });

  // Pub. L. 119-21, section 70424: tax years beginning after December 31, 2025.
  it.each([2022, 2023, 2024, 2025])(
    "cash contributions without itemizing do not count in %i",
    (year) => {
      for (const status of ["joint", "single"])
        expect(contributionsOf(year, status, { charitableCash: 5_000 })).toEqual([]);
    }
  );
});

describe("the business income deduction in it", () => {
  it("takes the profit less half the self-employment tax, or the amount given", () => {
    // 100,000 less 7,065 is 92,935; less 15,750 is 77,185; 20% of that, less than 20% of 92,935
    const profit = { businessProfit: 100_000 };
    expect(amounts(2025, "single", profit)).toContainEqual([
      "Less business income deduction",
      -15_437,
    ]);
    expect(
      amounts(2025, "single", { ...profit, wages: 80_000, qualifiedBusinessIncome: 50_000 })
    ).toContainEqual(["Less business income deduction", -10_000]);
    expect(
      amounts(2025, "single", { ...profit, wages: 80_000, qualifiedBusinessIncome: 0 }).flat()
    ).not.toContain("Less business income deduction");
  });

  it("minds wages, property and the kind of service", () => {
    const given = { wages: 400_000, qualifiedBusinessIncome: 100_000 };
    const deduction = (written: Written): unknown =>
      amounts(2025, "single", { ...given, ...written }).find(([what]) =>
        String(what).includes("business")
      )?.[1];
    expect(deduction({})).toBeUndefined();
    expect(deduction({ businessWages: 30_000 })).toBe(-15_000);
    expect(deduction({ businessProperty: 400_000 })).toBe(-10_000);
    expect(deduction({ businessWages: 30_000, specifiedService: 1 })).toBeUndefined();
  });
});

// 26 U.S.C. 68(a): the excess is that of taxable income before the limit, with the itemized deductions added to it: the other deductions,
// that for business income among them, come off first. 199A(e)(1) takes taxable income without regard to section 68.
describe("the limit on itemized deductions", () => {
  it("cuts by 2/37 what lies above the edge of the highest rate", () => {
    const given = { wages: 740_600, itemizedDeductions: 74_000 };
    expect(amounts(2026, "single", given, "itemized")[0]).toEqual([
      "Less itemized deductions",
      -70_000,
    ]);
  });

  it("does not bite where the business income deduction keeps income below that edge", () => {
    // 700,000 less 80,000 is 620,000, below 640,600
    const given = {
      wages: 300_000,
      partnershipIncome: 400_000,
      qualifiedBusinessIncome: 400_000,
      businessWages: 400_000,
      itemizedDeductions: 100_000,
    };
    expect(amounts(2026, "single", given, "itemized")).toEqual([
      ["Less itemized deductions", -100_000],
      ["Less business income deduction", -80_000],
      ["Taxable income", 520_000],
    ]);
  });

  // 1,000,000 less 24,830 is 975,170; 20% of 875,170 is 175,034; 2/37 of 100,000 is 5,405, of 159,536 more
  it("is not part of the income on which the business income deduction is calculated", () => {
    const given = {
      businessProfit: 1_000_000,
      businessWages: 600_000,
      itemizedDeductions: 100_000,
    };
    expect(amounts(2026, "single", given, "itemized")).toEqual([
      ["Less itemized deductions", -94_595],
      ["Less business income deduction", -175_034],
      ["Taxable income", 705_541],
    ]);
  });

  // 26 U.S.C. 56(b)(1): section 68 does not apply to the minimum tax.
  it("is taken back by the minimum tax", () => {
    const given = { wages: 1_000_000, itemizedDeductions: 100_000, minimumTaxItems: 500_000 };
    expect(amtAdjustments(2026, "single", given, "itemized")).toBe(500_000 - 5_405);
    expect(amtAdjustments(2025, "single", given, "itemized")).toBe(500_000);
    expect(amtAdjustments(2026, "single", given)).toBe(516_100);
  });
});

// Form 6251 line 2a: the standard deduction, or the taxes of Schedule A line 7; the senior deduction as reported of the 2025 instructions.
describe("what the minimum tax adds back", () => {
  it("is the standard deduction or the state and local taxes, and what is given", () => {
    expect(amtAdjustments(2025, "single", { wages: 90_000 })).toBe(15_750);
    expect(
      amtAdjustments(
        2025,
        "single",
        {
          wages: 90_000,
          itemizedDeductions: 20_000,
          stateAndLocalTaxes: 9_000,
          minimumTaxItems: 1_000,
        },
        "itemized"
      )
    ).toBe(10_000);
    expect(amtAdjustments(2025, "single", { wages: 50_000, aged: 1, tips: 500 })).toBe(23_750);
  });
});
