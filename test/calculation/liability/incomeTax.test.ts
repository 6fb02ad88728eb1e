import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { incomeTax } from "../../../src/calculation/liability/incomeTax";
import { ordinaryTax } from "../../../src/calculation/liability/ordinaryTax";
import { rulebook } from "../../../src/rules/rulebook";
import derived from "../../fixtures/published/liability/gain-worksheet.json";
import { dollarsUpTo, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

const tax = (
  taxYear: number,
  status: string,
  income: string | number,
  gain: string | number = 0
): string =>
  incomeTax(year(taxYear), statusOf(status), usd(income), usd(gain), rulebook).toString();

describe("the worksheet for qualified dividends and capital gain", () => {
  it.each(derived.cases)("$case ($source.origin)", (one) => {
    const { taxYear, status, taxableIncome, preferentialIncome, lines } = one;
    expect(tax(taxYear, status, taxableIncome, preferentialIncome)).toBe(lines[25]);
    expect(tax(taxYear, status, taxableIncome)).toBe(lines[24]);
    const ordinary = usd(taxableIncome).minus(preferentialIncome).toString();
    expect(tax(taxYear, status, ordinary)).toBe(lines[22]);
    expect(usd(lines[18]).plus(lines[21]).plus(lines[22]).toString()).toBe(lines[23]);
  });

  // The first two derived rows: the tax without the preferential rates is the smaller where a band of the table hides the gain.
  it("takes the tax without the rates where that is less", () => {
    const smaller = derived.cases.filter(({ lines }) => usd(lines[24]).lessThan(lines[23]));
    expect(smaller).toHaveLength(2);
  });
});

describe("where a gain meets the edges", () => {
  // Single 2025, 0% to 48,350: table on 48,000 to 48,050 is 1,192.50 + 12% of 36,100 = 5,524.50; 650 of 1,000 above the edge.
  it.each([
    [2025, "single", 48_350, 350, "5525"],
    [2025, "single", 49_000, 1_000, "5622.5"],
    // Single 2025, 15% to 533,400: 57,231 + 35% of 282,375 = 156,062.25 on 532,900; 500 at 15% and 500 at 20%.
    [2025, "single", 533_900, 1_000, "156237.25"],
    // Separate 2024, 15% to 291,850, not half of 583,750: 55,678.50 + 35% of 48,025 = 72,487.25 on 291,750; 100 at 15%, 125 at 20%.
    [2024, "separate", 291_975, 225, "72527.25"],
  ])("%i %s on %d with %d of gain: %s", (taxYear, status, income, gain, owed) => {
    expect(tax(taxYear, status, income, gain)).toBe(owed);
  });

  it("larger than taxable income it counts only as far as there is income", () => {
    expect(tax(2025, "single", 60_000, 75_000)).toBe("1747.5"); // 15% of 60,000 less 48,350
    expect(tax(2025, "single", 0, 75_000)).toBe("0");
  });

  it("a loss or nothing leaves the ordinary tax", () => {
    // single 2025: 5,578.50 + 22% of 11,550 = 8,119.50, half up
    expect(tax(2025, "single", 60_000, 0)).toBe("8120");
    expect(tax(2025, "single", 60_000, -500)).toBe("8120");
  });
});

describe("any return", () => {
  const anyReturn = [years, statuses, dollarsUpTo(1_000_000), dollarsUpTo(1_000_000)] as const;

  it("never pays more for its gain than for ordinary income", () => {
    fc.assert(
      fc.property(...anyReturn, (taxYear, status, income, gain) => {
        const owed = incomeTax(taxYear, status, income, gain, rulebook);
        const ordinary = ordinaryTax(taxYear, status, income, rulebook);
        expect(owed.isNegative()).toBe(false);
        expect(owed.lessThanOrEqualTo(ordinary)).toBe(true);
      }),
      RUNS
    );
  });

  it("never pays less for one more dollar of income, or of gain in place of wages", () => {
    fc.assert(
      fc.property(...anyReturn, (taxYear, status, income, gain) => {
        const owed = incomeTax(taxYear, status, income, gain, rulebook);
        const more = incomeTax(taxYear, status, income.plus(1), gain, rulebook);
        const moreGain = incomeTax(taxYear, status, income.plus(1), gain.plus(1), rulebook);
        expect(more.greaterThanOrEqualTo(owed)).toBe(true);
        expect(moreGain.greaterThanOrEqualTo(owed)).toBe(true);
      }),
      RUNS
    );
  });
});
