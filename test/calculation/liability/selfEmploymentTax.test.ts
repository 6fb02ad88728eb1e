import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { selfEmploymentTax } from "../../../src/calculation/liability/selfEmploymentTax";
import { toWholeDollars } from "../../../src/money/dollars";
import { rulebook } from "../../../src/rules/rulebook";
import derived from "../../fixtures/published/liability/self-employment.json";
import { dollarsUpTo, HELD, RUNS, usd, year, years } from "./givenTax";

const tax = (taxYear: number, profit: string | number, wages: string | number = 0): string =>
  selfEmploymentTax(year(taxYear), usd(profit), usd(wages), rulebook).toString();

/** Social Security Administration, contribution and benefit base; 2026: 90 FR 49047. */
const WAGE_BASE: Readonly<Record<number, number>> = {
  2022: 147_000,
  2023: 160_200,
  2024: 168_600,
  2025: 176_100,
  2026: 184_500,
};

describe("Schedule SE", () => {
  it.each(derived.cases)("$case ($source.origin)", ({ taxYear, profit, wages, lines }) => {
    const owed = selfEmploymentTax(year(taxYear), usd(profit), usd(wages), rulebook);
    expect(toWholeDollars(owed).toString()).toBe(lines[12]);
    expect(toWholeDollars(toWholeDollars(owed).div(2)).toString()).toBe(lines[13]);
    expect(Number(owed)).toBeCloseTo(Number(lines[10]) + Number(lines[11]), 6);
  });

  // 92,350 of net earnings: 12.4% is 11,451.40, 2.9% is 2,678.15.
  it("takes 15.3% of 92.35% of a profit", () => {
    expect(tax(2025, 100_000)).toBe("14129.55");
  });
});

// 26 U.S.C. 1402(b)(2): nothing on net earnings below 400. 92.35% of 433.13 is 399.995555, of 433.14 400.00479.
describe("the least net earnings", () => {
  it.each([
    ["433.13", "0"],
    ["433.14", "61.20073287"],
    ["0", "0"],
    ["-5000", "0"],
  ])("of a profit of %s leave a tax of %s", (profit, owed) => {
    for (const taxYear of HELD) expect(tax(taxYear, profit)).toBe(owed);
  });
});

describe.each(HELD)("the wage base of %i", (taxYear) => {
  const base = WAGE_BASE[taxYear] ?? 0;
  const medicare = "267.815"; // 2.9% of 9,235

  it("is used up by wages first", () => {
    expect(tax(taxYear, 10_000, base - 9_235)).toBe("1412.955"); // 15.3% of 9,235
    expect(tax(taxYear, 10_000, base - 100)).toBe(usd(medicare).plus("12.4").toString());
    expect(tax(taxYear, 10_000, base - 1)).toBe(usd(medicare).plus("0.124").toString());
    expect(tax(taxYear, 10_000, base)).toBe(medicare);
    expect(tax(taxYear, 10_000, base + 50_000)).toBe(medicare);
  });

  it("bounds the Social Security part of a large profit", () => {
    const social = usd(base).times("0.124");
    const earnings = usd(1_000_000).times("0.9235").times("0.029");
    expect(tax(taxYear, 1_000_000)).toBe(social.plus(earnings).toString());
  });
});

describe("any profit", () => {
  it("pays between 2.9 and 15.3% of its net earnings, no more for more wages", () => {
    fc.assert(
      fc.property(years, dollarsUpTo(600_000), dollarsUpTo(250_000), (taxYear, profit, wages) => {
        const owed = selfEmploymentTax(taxYear, profit, wages, rulebook);
        const earnings = profit.times("0.9235");
        const more = selfEmploymentTax(taxYear, profit, wages.plus(1), rulebook);
        expect(more.lessThanOrEqualTo(owed)).toBe(true);
        expect(owed.lessThanOrEqualTo(earnings.times("0.153"))).toBe(true);
        if (earnings.lessThan(400)) expect(owed.isZero()).toBe(true);
        else expect(owed.greaterThanOrEqualTo(earnings.times("0.029"))).toBe(true);
      }),
      RUNS
    );
  });
});
