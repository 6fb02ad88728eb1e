import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { estimatedTaxPenalty } from "../../../src/calculation/estimatedTax/estimatedTaxPenalty";
import {
  firstInstallment,
  type FirstInstallmentInput,
} from "../../../src/calculation/estimatedTax/firstInstallment";
import { requiredAnnualPayment } from "../../../src/calculation/estimatedTax/requiredAnnualPayment";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { day, dollarsUpTo, RUNS, usd } from "./givenEstimates";

const ORDINARY: FirstInstallmentInput = {
  taxYear: calendarTaxYear(2026),
  filingStatus: "joint",
  currentYearTax: usd(24_000),
  priorYearTax: usd(20_000),
  priorYearAgi: usd(120_000),
  farmerOrFisherman: false,
  withholding: usd(8_000),
  overpaymentApplied: usd(0),
};

const first = (given: Partial<FirstInstallmentInput>): string =>
  firstInstallment({ ...ORDINARY, ...given }, rulebook).toFixed(2);

describe("the first installment", () => {
  it("is a quarter of the required annual payment less a quarter of the withholding", () => {
    // 26 U.S.C. 6654(d)(1)(A), (g)(1): (20,000 − 8,000) / 4
    expect(first({})).toBe("3000.00");
  });

  it("is less what last year's overpayment brings, never below nothing", () => {
    // 26 CFR 301.6402-3(a)(5): credited to the installments of the new year, the first of them in April
    expect(first({ overpaymentApplied: usd(1_200) })).toBe("1800.00");
    expect(first({ overpaymentApplied: usd(3_000) })).toBe("0.00");
    expect(first({ overpaymentApplied: usd("3000.01") })).toBe("0.00");
  });

  it("is nothing where less than $1,000 is left after withholding", () => {
    // (e)(1): "less than $1,000"; 90% of 8,999.99 and of 9,000 is more than the 8,000 withheld
    const given = { priorYearTax: undefined };
    expect(first({ ...given, currentYearTax: usd("8999.99") })).toBe("0.00");
    expect(first({ ...given, currentYearTax: usd(9_000) })).toBe("25.00");
    // what is credited is no withholding: section 31 alone counts
    expect(first({ ...given, currentYearTax: usd(9_000), overpaymentApplied: usd(10) })).toBe(
      "15.00"
    );
  });

  it("is nothing where withholding covers the required annual payment", () => {
    expect(first({ withholding: usd(20_000) })).toBe("0.00");
    expect(first({ withholding: usd("19999.99") })).toBe("0.01");
  });

  it("is nothing without tax last year, and counts on 90% where there was no full year", () => {
    expect(first({ priorYearTax: usd(0) })).toBe("0.00");
    expect(first({ priorYearTax: undefined })).toBe("3400.00");
  });

  it("is nothing in April for farmers and fishers", () => {
    // (i)(1)(A), (B): one installment, in January
    expect(first({ farmerOrFisherman: true })).toBe("0.00");
  });

  // 26 U.S.C. 6654(j)(3)(A): 50 percent; (g)(1): an equal part of the withholding on each of three due dates
  it("of a nonresident is half of the required annual payment less a third of the withholding", () => {
    const filerType = "nonresident";
    // 20,000 / 2 − 8,000 / 3
    expect(first({ filerType })).toBe("7333.34");
    expect(first({ filerType, withholding: usd(0) })).toBe("10000.00");
    expect(first({ filerType, overpaymentApplied: usd("7333.34") })).toBe("0.00");
    expect(first({ filerType, farmerOrFisherman: true })).toBe("0.00");
    expect(first({ filerType, withholding: usd("23000.01") })).toBe("0.00");
  });

  it("rounds up, so that four of them are enough", () => {
    expect(first({ priorYearTax: usd("20000.01") })).toBe("3000.01");
  });

  it("is refused before 2003", () => {
    expect(() => first({ taxYear: calendarTaxYear(2002) })).toThrow(NotInTableError);
  });

  it("paid on time leaves no penalty on the first installment, a cent less does", () => {
    fc.assert(
      fc.property(
        dollarsUpTo(90_000),
        dollarsUpTo(90_000),
        dollarsUpTo(30_000),
        (tax, prior, withholding) => {
          const taxYear = calendarTaxYear(2024);
          const given = {
            ...ORDINARY,
            taxYear,
            currentYearTax: tax,
            priorYearTax: prior,
            withholding,
          };
          const installment = firstInstallment(given, rulebook);
          fc.pre(installment.greaterThan(100));
          const required = requiredAnnualPayment(given, rulebook);
          const firstLines = (amount: typeof installment): number =>
            estimatedTaxPenalty(
              {
                taxYear,
                requiredAnnualPayment: required,
                withholding,
                payments: [{ date: day("2024-04-15"), amount }],
              },
              rulebook
            ).lines.filter((line) => line.installment === 1).length;
          expect(firstLines(installment)).toBe(0);
          expect(firstLines(installment.minus("0.01"))).toBeGreaterThan(0);
        }
      ),
      RUNS
    );
  });
});
