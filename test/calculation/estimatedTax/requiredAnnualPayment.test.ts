import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  requiredAnnualPayment,
  type RequiredAnnualPaymentInput,
} from "../../../src/calculation/estimatedTax/requiredAnnualPayment";
import { FILING_STATUSES } from "../../../src/calculation/filingStatus";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/required-annual-payment.json";
import { dollarsUpTo, RUNS, usd } from "./givenEstimates";

const ORDINARY: RequiredAnnualPaymentInput = {
  taxYear: calendarTaxYear(2026),
  filingStatus: "single",
  currentYearTax: usd(100_000),
  priorYearTax: usd(20_000),
  priorYearAgi: usd(120_000),
  farmerOrFisherman: false,
};

const required = (given: Partial<RequiredAnnualPaymentInput>): string =>
  requiredAnnualPayment({ ...ORDINARY, ...given }, rulebook).toString();

describe("the required annual payment as published", () => {
  it.each(published.cases)("$case ($source.document)", ({ inputs, expected }) => {
    const given = {
      taxYear: calendarTaxYear(inputs.taxYear),
      currentYearTax: usd(inputs.currentYearTax),
      priorYearTax: usd(inputs.priorYearTax),
    };
    const alone = requiredAnnualPayment(
      { ...ORDINARY, ...given, priorYearTax: undefined },
      rulebook
    );
    expect(alone.toFixed(0)).toBe(expected.ninetyPercent);
    expect(required(given)).toBe(expected.requiredAnnualPayment);
  });
});

describe("the required annual payment", () => {
  // 26 U.S.C. 6654(d)(1)(C): exceeds $150,000; $75,000 for a married individual filing separately in the year estimated
  it.each([
    ["single", "150000", "20000"],
    ["single", "150000.01", "22000"],
    ["single", "150001", "22000"],
    ["joint", "150000", "20000"],
    ["joint", "150000.01", "22000"],
    ["head", "150000.01", "22000"],
    ["survivor", "150000.01", "22000"],
    ["separate", "75000", "20000"],
    ["separate", "75000.01", "22000"],
    ["separate", "75001", "22000"],
    ["separate", "150000", "22000"],
    ["single", "75000.01", "20000"],
  ] as const)("%s with last year's income at %s is %s", (status, income, dollars) => {
    expect(required({ filingStatus: status, priorYearAgi: usd(income) })).toBe(dollars);
  });

  it("is the lesser of the two shares, whichever that is", () => {
    // (d)(1)(B): 90% of 22,222.22 is 19,999.998
    expect(required({ currentYearTax: usd("22222.22") })).toBe("19999.998");
    expect(required({ currentYearTax: usd("22222.23") })).toBe("20000");
  });

  it("is nothing where last year had no tax, 90% of this year's where there was no full year", () => {
    // (e)(2); (d)(1)(B), flush language
    expect(required({ priorYearTax: usd(0) })).toBe("0");
    expect(required({ priorYearTax: undefined })).toBe("90000");
  });

  it("is two thirds for farmers and fishers, and never 110% of last year's", () => {
    // (i)(1)(C), (D)
    expect(
      required({ farmerOrFisherman: true, currentYearTax: usd(27_000), priorYearTax: undefined })
    ).toBe("18000");
    const rich = { farmerOrFisherman: true, priorAdjustedGrossIncome: usd(1_000_000) };
    expect(required(rich)).toBe("20000");
  });

  it("is nothing on nothing", () => {
    expect(required({ currentYearTax: usd(0), priorYearTax: undefined })).toBe("0");
  });

  it("is refused before 2003, when the share of higher incomes was another", () => {
    // 112% for 2002 (IRM 3.14.1)
    expect(required({ taxYear: calendarTaxYear(2003) })).toBe("20000");
    expect(() => required({ taxYear: calendarTaxYear(2002) })).toThrow(NotInTableError);
  });

  it("is never more than either share, and never less for a higher income", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...FILING_STATUSES),
        dollarsUpTo(90_000),
        dollarsUpTo(90_000),
        dollarsUpTo(300_000),
        dollarsUpTo(10_000),
        fc.boolean(),
        (status, currentYearTax, priorYearTax, income, more, farmerOrFisherman) => {
          const given = { ...ORDINARY, status, currentYearTax, priorYearTax, farmerOrFisherman };
          const at = (priorAdjustedGrossIncome: typeof income): typeof income =>
            requiredAnnualPayment({ ...given, priorYearAgi: priorAdjustedGrossIncome }, rulebook);
          const dollars = at(income);
          const ofThisYear = farmerOrFisherman
            ? currentYearTax.times(2).div(3)
            : currentYearTax.times("0.9");
          expect(dollars.lessThanOrEqualTo(ofThisYear)).toBe(true);
          expect(dollars.lessThanOrEqualTo(priorYearTax.times("1.1"))).toBe(true);
          expect(at(income.plus(more)).greaterThanOrEqualTo(dollars)).toBe(true);
          const without = { ...given, priorYearTax: undefined, priorAdjustedGrossIncome: income };
          expect(requiredAnnualPayment(without, rulebook).equals(ofThisYear)).toBe(true);
        }
      ),
      RUNS
    );
  });
});
