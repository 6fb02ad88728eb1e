import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { annualizationPeriods } from "../../../src/calculation/estimatedTax/annualizationPeriods";
import {
  annualizedSelfEmploymentTax,
  type AnnualizedSelfEmploymentTax,
} from "../../../src/calculation/estimatedTax/annualizedSelfEmploymentTax";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/annualized-installments.json";
import { dollarsUpTo, RUNS, usd } from "./givenEstimates";
import { rulesOfYear } from "./givenPeriods";

const PERIODS = annualizationPeriods(calendarTaxYear(2025), "resident", rulebook);
const periodOf = (months: number) => {
  const found = PERIODS.find((period) => period.months === months);
  if (!found) throw new RangeError(`no period has ${String(months)} months`);
  return found;
};
const taxOf = (
  months: number,
  earnings: string | number,
  wages: string | number,
  year = 2025,
  rules: Pick<typeof rulebook, "selfEmploymentTax"> = rulebook
): AnnualizedSelfEmploymentTax =>
  annualizedSelfEmploymentTax(
    calendarTaxYear(year),
    usd(earnings),
    usd(wages),
    periodOf(months),
    rules
  );

const oldRules = (taxYear: number, wageBase: string, socialSecurityRate?: string) =>
  rulesOfYear({
    taxYear,
    wageBase,
    standardDeduction: "0",
    brackets: [{ rate: "0" }],
    ...(socialSecurityRate === undefined ? {} : { socialSecurityRate }),
  });

describe("the prorated wage base", () => {
  it.each(published.proratedWageBases.cases)(
    "of $taxYear is that of the form, line 29",
    ({ taxYear, wageBase, line29 }) => {
      const rules = taxYear < 2022 ? oldRules(taxYear, wageBase) : rulebook;
      const found = PERIODS.map(({ months }) => taxOf(months, 0, 0, taxYear, rules).wageBase);
      expect(found.map(String)).toEqual(line29);
    }
  );
});

describe("annualized self-employment tax as published", () => {
  it.each(published.regulation)(
    "$case ($source.document)",
    ({ inputs: { months, netEarnings, wages, wageBase, rate }, expected }) => {
      const { socialSecurity, room } = taxOf(
        months,
        netEarnings,
        wages,
        1967,
        oldRules(1967, wageBase, rate)
      );
      const { factor } = periodOf(months);
      expect(factor.times(wages).toString()).toBe(expected.annualizedWages);
      expect(factor.times(room).toString()).toBe(expected.counted);
      expect(socialSecurity.toString()).toBe(expected.tax);
    }
  );
});

// Form 2210 (2018 to 2021), Schedule AI: lines 32 and 34 print the rates times the factor.
describe("annualized self-employment tax", () => {
  it.each([
    [3, "0.496", "0.116"],
    [5, "0.2976", "0.0696"],
    [8, "0.186", "0.0435"],
    [12, "0.124", "0.029"],
  ])("of %d months has the factors %s and %s of the form", (months, social, medicare) => {
    const found = taxOf(months, 1_000, 0);
    expect(found.socialSecurity.div(1_000).toString()).toBe(social);
    expect(found.medicare.div(1_000).toString()).toBe(medicare);
    expect(found.tax.toString()).toBe(found.socialSecurity.plus(found.medicare).toString());
  });

  it("counts net earnings up to what the wages leave of the wage base", () => {
    // 44,025 − 10,000 = 34,025 x 0.496, and 50,000 x 0.116
    const found = taxOf(3, 50_000, 10_000);
    expect(found.room.toString()).toBe("34025");
    expect(found.socialSecurity.toString()).toBe("16876.4");
    expect(found.medicare.toString()).toBe("5800");
    expect(taxOf(3, 34_025, 10_000).socialSecurity.toString()).toBe("16876.4");
    expect(taxOf(3, 34_024, 10_000).socialSecurity.toString()).toBe("16875.904");
  });

  it("has no Social Security part beyond the wage base, and nothing on a loss", () => {
    expect(taxOf(3, 1_000, 44_026).socialSecurity.toString()).toBe("0");
    expect(taxOf(3, 1_000, 44_026).tax.toString()).toBe("116");
    expect(taxOf(12, -5_000, 0).tax.toString()).toBe("0");
  });

  it("is the tax of the whole year where the income is even", () => {
    fc.assert(
      fc.property(dollarsUpTo(300_000), dollarsUpTo(300_000), (earnings, wages) => {
        const year = taxOf(12, earnings.toString(), wages.toString());
        for (const { months, factor } of PERIODS) {
          const even = taxOf(months, earnings.div(factor).toString(), wages.div(factor).toString());
          expect(even.tax.minus(year.tax).abs().lessThan("0.000001")).toBe(true);
        }
      }),
      RUNS
    );
  });
});
