import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { netInvestmentIncomeTax } from "../../../src/calculation/liability/netInvestmentIncomeTax";
import { rulebook } from "../../../src/rules/rulebook";
import derived from "../../fixtures/published/liability/net-investment.json";
import { dollarsUpTo, HELD, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

const tax = (
  taxYear: number,
  status: string,
  investment: string | number,
  income: string | number
): string =>
  netInvestmentIncomeTax(
    year(taxYear),
    statusOf(status),
    usd(investment),
    usd(income),
    rulebook
  ).toString();

describe("Form 8960", () => {
  it.each(derived.cases)(
    "$case ($source.origin)",
    ({ status, netInvestmentIncome, income, tax: owed }) => {
      for (const taxYear of HELD)
        expect(tax(taxYear, status, netInvestmentIncome, income)).toBe(owed);
    }
  );
});

// 26 U.S.C. 1411(b): 250,000 on a joint return and of a surviving spouse, half of it separate, 200,000 in any other case.
describe("the threshold", () => {
  it.each([
    ["single", 200_000],
    ["head", 200_000],
    ["joint", 250_000],
    ["survivor", 250_000],
    ["separate", 125_000],
  ])("of %s is %d", (status, threshold) => {
    for (const taxYear of HELD) {
      expect(tax(taxYear, status, 10_000, threshold - 1)).toBe("0");
      expect(tax(taxYear, status, 10_000, threshold)).toBe("0");
      expect(tax(taxYear, status, 10_000, threshold + 1)).toBe("0.038");
      expect(tax(taxYear, status, 10_000, threshold + 10_000)).toBe("380");
      expect(tax(taxYear, status, 10_000, threshold + 10_001)).toBe("380");
    }
  });

  it("bears nothing without investment income, or on less than none", () => {
    expect(tax(2025, "single", 0, 900_000)).toBe("0");
    expect(tax(2025, "single", -5_000, 900_000)).toBe("0");
    expect(tax(2025, "single", 5_000, -900_000)).toBe("0");
  });
});

describe("any return", () => {
  it("pays 3.8% of the lesser amount, no less for more of either", () => {
    fc.assert(
      fc.property(
        years,
        statuses,
        dollarsUpTo(300_000),
        dollarsUpTo(600_000),
        (taxYear, status, investment, income) => {
          const of = (more: number, moreIncome: number) =>
            netInvestmentIncomeTax(
              taxYear,
              status,
              investment.plus(more),
              income.plus(moreIncome),
              rulebook
            );
          expect(of(0, 0).lessThanOrEqualTo(investment.times("0.038"))).toBe(true);
          expect(of(1, 0).greaterThanOrEqualTo(of(0, 0))).toBe(true);
          expect(of(0, 1).greaterThanOrEqualTo(of(0, 0))).toBe(true);
        }
      ),
      RUNS
    );
  });
});
