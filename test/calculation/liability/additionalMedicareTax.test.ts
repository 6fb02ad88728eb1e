import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { additionalMedicareTax } from "../../../src/calculation/liability/additionalMedicareTax";
import { rulebook } from "../../../src/rules/rulebook";
import derived from "../../fixtures/published/liability/additional-medicare.json";
import { dollarsUpTo, HELD, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

const tax = (
  taxYear: number,
  status: string,
  wages: string | number,
  earnings: string | number = 0
): string =>
  additionalMedicareTax(
    year(taxYear),
    statusOf(status),
    usd(wages),
    usd(earnings),
    rulebook
  ).toString();

describe("Form 8959", () => {
  it.each(derived.cases)("$case ($source.origin)", ({ status, wages, profit, tax: owed }) => {
    const earnings = usd(profit).times("0.9235").toString();
    for (const taxYear of HELD) expect(tax(taxYear, status, wages, earnings)).toBe(owed);
  });
});

// 26 U.S.C. 3101(b)(2), 1401(b)(2): 250,000 joint, half of it separate, 200,000 in any other case, a surviving spouse too.
describe("the threshold", () => {
  it.each([
    ["single", 200_000],
    ["head", 200_000],
    ["survivor", 200_000],
    ["joint", 250_000],
    ["separate", 125_000],
  ])("of %s is %d, for wages and for net earnings", (status, threshold) => {
    for (const taxYear of HELD) {
      expect(tax(taxYear, status, threshold - 1)).toBe("0");
      expect(tax(taxYear, status, threshold)).toBe("0");
      expect(tax(taxYear, status, threshold + 1)).toBe("0.009");
      expect(tax(taxYear, status, 0, threshold)).toBe("0");
      expect(tax(taxYear, status, 0, threshold + 1)).toBe("0.009");
    }
  });

  it("is used up by wages before net earnings meet it, never below zero", () => {
    expect(tax(2025, "single", 199_000, 1_000)).toBe("0");
    expect(tax(2025, "single", 199_000, 2_000)).toBe("9");
    expect(tax(2025, "single", 200_000, 1_000)).toBe("9");
    expect(tax(2025, "single", 225_000, 1_000)).toBe("234"); // 25,000 and 1,000
  });

  it("is met by no loss, and no loss lowers the tax on wages", () => {
    expect(tax(2025, "single", 225_000, -50_000)).toBe("225");
  });
});

describe("any wages and net earnings", () => {
  it("together bear 0.9% of what is above the threshold, however they are split", () => {
    fc.assert(
      fc.property(
        years,
        statuses,
        dollarsUpTo(400_000),
        dollarsUpTo(400_000),
        (taxYear, status, wages, earnings) => {
          const owed = additionalMedicareTax(taxYear, status, wages, earnings, rulebook);
          const asWages = additionalMedicareTax(
            taxYear,
            status,
            wages.plus(earnings),
            usd(0),
            rulebook
          );
          expect(owed.equals(asWages)).toBe(true);
          expect(owed.lessThanOrEqualTo(wages.plus(earnings).times("0.009"))).toBe(true);
        }
      ),
      RUNS
    );
  });
});
