import { describe, expect, it } from "vitest";
import { grossIncome } from "../../../src/calculation/liability/grossIncome";
import { rulebook } from "../../../src/rules/rulebook";
import { known, statusOf, year, type Written } from "./givenTax";

const gross = (status: string, written: Written, taxYear = 2025) =>
  grossIncome(year(taxYear), statusOf(status), known(written), rulebook);
const income = (status: string, written: Written): number =>
  gross(status, written).adjustedGrossIncome.toNumber();
const lines = (status: string, written: Written) =>
  gross(status, written).lines.map(({ what, amount }) => [what, amount.toNumber()]);

describe("adjusted gross income", () => {
  // Form 1040, lines 1 to 11; Schedule SE: 92.35% of 100,000 at 15.3% is 14,129.55, half of 14,130 is 7,065.
  it("is shown line by line, in whole dollars", () => {
    expect(
      lines("single", {
        wages: 20_000.4,
        interest: 100.5,
        businessProfit: 100_000,
        longTermGain: -9_000,
        adjustments: 1_000,
      })
    ).toEqual([
      ["Wages", 20_000],
      ["Taxable interest", 101],
      ["Business profit or loss", 100_000],
      ["Capital gain or loss", -3_000],
      ["Total income", 117_101],
      ["Less deductible part of self-employment tax", -7_065],
      ["Less other adjustments", -1_000],
      ["Adjusted gross income", 109_036],
    ]);
  });

  it("names taxable benefits, and no adjustment that is none", () => {
    expect(lines("single", { wages: 100, taxableSocialSecurity: 50 })).toEqual([
      ["Wages", 100],
      ["Taxable Social Security benefits", 50],
      ["Total income", 150],
      ["Adjusted gross income", 150],
    ]);
  });

  it("counts every kind of income once", () => {
    const each = {
      wages: 1,
      interest: 2,
      ordinaryDividends: 4,
      retirementDistributions: 8,
      pensions: 16,
      rentalIncome: 32,
      partnershipIncome: 64,
      unemployment: 128,
      otherIncome: 256,
      longTermGain: 512,
      shortTermGain: 1_024,
      taxableSocialSecurity: 2_048,
    };
    expect(income("single", each)).toBe(4_095);
  });

  it("does not count what is no income: exempt interest, deductions, payments, owner's wages", () => {
    const none = { taxExemptInterest: 9, ownerWages: 9, withholding: 9, itemizedDeductions: 9 };
    expect(income("single", { wages: 100, ...none })).toBe(100);
  });

  it("may be a loss", () => {
    expect(income("single", { rentalIncome: -20_000 })).toBe(-20_000);
    expect(income("separate", { longTermGain: -20_000 })).toBe(-1_500);
  });
});

// 26 U.S.C. 86(b): adjusted gross income, exempt interest and half of the benefits against the base.
describe("benefits in gross income", () => {
  it("count exempt interest and lose half the self-employment tax and adjustments", () => {
    // joint: 30,000 wages, 4,000 exempt, 1,000 adjustments, half of 20,000: 43,000, 11,000 above the base, half of it
    const given = { wages: 30_000, taxExemptInterest: 4_000, adjustments: 1_000 };
    expect(income("joint", { ...given, socialSecurityBenefits: 20_000 })).toBe(34_500);
  });

  // Social Security Benefits Worksheet, lines 2 to 7: a loss counts against half of the benefits.
  it("are free where a loss keeps half of them below the base", () => {
    const given = { socialSecurityBenefits: 80_000, rentalIncome: -20_000 };
    expect(income("single", given)).toBe(-20_000);
  });

  it("known to be taxable are added as they are", () => {
    expect(income("single", { pensions: 10_000, taxableSocialSecurity: 5_000 })).toBe(15_000);
  });
});

describe("losses, carryovers and exclusions", () => {
  // 26 U.S.C. 461(l)(1): 313,000 of a loss of 500,000 is allowed in 2025; Schedule 1, line 8p.
  it("an excess business loss comes back as a line of its own", () => {
    expect(lines("single", { wages: 1_000_000, businessProfit: -500_000 })).toEqual([
      ["Wages", 1_000_000],
      ["Business profit or loss", -500_000],
      ["Excess business loss, not deductible this year", 187_000],
      ["Total income", 687_000],
      ["Adjusted gross income", 687_000],
    ]);
  });

  // 26 U.S.C. 461(l)(3)(A): the trades and businesses of the year together.
  it("the businesses of a return are limited together", () => {
    const businesses = { rentalIncome: -200_000, partnershipIncome: -300_000 };
    expect(income("single", businesses)).toBe(-313_000);
    // half of the self-employment tax on 100,000 is 7,065
    expect(income("single", { ...businesses, businessProfit: 100_000 })).toBe(-320_065);
    expect(income("joint", businesses)).toBe(-500_000);
  });

  // 26 U.S.C. 172(a); Schedule 1, line 8a: the amount given is the deduction of the year.
  it("a net operating loss carryforward comes off income", () => {
    expect(lines("single", { wages: 90_000, netOperatingLoss: 20_000 })).toEqual([
      ["Wages", 90_000],
      ["Less net operating loss carryforward", -20_000],
      ["Total income", 70_000],
      ["Adjusted gross income", 70_000],
    ]);
  });

  // 26 U.S.C. 1212(b)(1): a carryover keeps its character; 1211(b): 3,000 above gains.
  it("a capital loss carryover comes off the gains of its kind", () => {
    const gains = { longTermGain: 10_000, shortTermGain: 10_000 };
    const preferential = (written: Written): number =>
      gross("single", written).preferentialIncome.toNumber();
    expect(preferential({ ...gains, longTermCarryover: 4_000 })).toBe(6_000);
    expect(preferential({ ...gains, shortTermCarryover: 4_000 })).toBe(10_000);
    expect(income("single", { ...gains, longTermCarryover: 4_000 })).toBe(16_000);
    expect(income("single", { wages: 50_000, longTermCarryover: 9_000 })).toBe(47_000);
    expect(income("single", { wages: 50_000, shortTermCarryover: 9_000 })).toBe(47_000);
  });

  // 26 U.S.C. 408(d)(8)(A): not included in income; it is part of what the account distributed.
  it("a qualified charitable distribution comes off the retirement distributions", () => {
    const given = { retirementDistributions: 30_000, charitableDistribution: 10_000 };
    expect(lines("single", given)).toEqual([
      ["Retirement distributions", 30_000],
      ["Less qualified charitable distribution", -10_000],
      ["Total income", 20_000],
      ["Adjusted gross income", 20_000],
    ]);
    expect(income("single", { pensions: 5_000, charitableDistribution: 10_000 })).toBe(5_000);
  });

  // 26 U.S.C. 86(c)(1)(C)(ii): half of 20,000 and 12,000 is below 25,000.
  it("a separate filer who lived apart includes no benefits below the base", () => {
    const given = { pensions: 12_000, socialSecurityBenefits: 20_000 };
    expect(income("separate", given)).toBe(29_000);
    expect(income("separate", { ...given, livedApart: 1 })).toBe(12_000);
    expect(income("separate", { ...given, livedApart: 0 })).toBe(29_000);
  });
});

describe("self-employment in it", () => {
  const tax = (status: string, written: Written): number =>
    gross(status, written).selfEmploymentTax.toNumber();

  // 26 U.S.C. 1402(b)(1): wages of the same person use up the base, 176,100 in 2025. 2.9% of 92,350 is 2,678.15.
  it("wages use up the wage base, on a joint return only those given as the owner's", () => {
    expect(tax("single", { businessProfit: 100_000, wages: 180_000 })).toBe(2_678);
    expect(tax("joint", { businessProfit: 100_000, wages: 180_000 })).toBe(14_130);
    expect(tax("joint", { businessProfit: 100_000, wages: 180_000, ownerWages: 180_000 })).toBe(
      2_678
    );
    expect(tax("single", { businessProfit: 100_000, wages: 180_000, ownerWages: 0 })).toBe(14_130);
  });

  it("net earnings are 92.35% of a profit, nothing of a loss", () => {
    expect(gross("single", { businessProfit: 100_000 }).netEarnings.toNumber()).toBe(92_350);
    expect(gross("single", { businessProfit: -100_000 }).netEarnings.toNumber()).toBe(0);
  });

  // 26 U.S.C. 1402(b)(2): no self-employment income where net earnings are below 400, so none for the additional tax either.
  it("net earnings below 400 are none", () => {
    expect(gross("single", { businessProfit: 433 }).netEarnings.toNumber()).toBe(0);
    expect(gross("single", { businessProfit: 434 }).netEarnings.toNumber()).toBe(400.799);
  });
});

describe("what later steps need", () => {
  it("preferential: qualified dividends and net long-term gain, no loss against the dividends", () => {
    const preferentialIncome = (written: Written): number =>
      gross("single", written).preferentialIncome.toNumber();
    expect(preferentialIncome({ qualifiedDividends: 500, longTermGain: 1_000 })).toBe(1_500);
    expect(
      preferentialIncome({ qualifiedDividends: 500, longTermGain: 1_000, shortTermGain: -400 })
    ).toBe(1_100);
    expect(preferentialIncome({ qualifiedDividends: 500, longTermGain: -1_000 })).toBe(500);
    expect(preferentialIncome({ shortTermGain: 1_000 })).toBe(0);
  });

  // 26 U.S.C. 1411(c)(1): interest, dividends, rents, gains; not wages, business, pensions.
  it("investment income: interest, dividends, gains and rents, never below zero", () => {
    const investment = (written: Written): number =>
      gross("single", written).netInvestmentIncome.toNumber();
    const given = { interest: 1, ordinaryDividends: 2, longTermGain: 4, shortTermGain: 8 };
    expect(investment({ ...given, rentalIncome: 16, qualifiedDividends: 2 })).toBe(31);
    expect(investment({ wages: 1, businessProfit: 1, pensions: 1, taxExemptInterest: 1 })).toBe(0);
    expect(investment({ interest: 5_000, longTermGain: -90_000 })).toBe(2_000);
    expect(investment({ interest: 5_000, rentalIncome: -90_000 })).toBe(0);
  });

  it("lines that rest on figures of the year name the law", () => {
    const given = { businessProfit: 100_000, longTermGain: 5, partnershipIncome: -500_000 };
    const sourced = gross("single", given).lines.filter(({ source }) => source !== undefined);
    expect(sourced.map(({ what }) => what)).toEqual([
      "Capital gain or loss",
      "Excess business loss, not deductible this year",
      "Less deductible part of self-employment tax",
    ]);
  });
});
