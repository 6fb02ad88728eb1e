import { describe, expect, it } from "vitest";
import { selfEmploymentTaxDeduction } from "../../../src/calculation/liability/selfEmploymentTaxDeduction";
import { rulebook } from "../../../src/rules/rulebook";
import derived from "../../fixtures/published/liability/self-employment.json";
import { HELD, usd, year } from "./givenTax";

const deduction = (taxYear: number, tax: string | number): string =>
  selfEmploymentTaxDeduction(year(taxYear), usd(tax), rulebook).toString();

// IRC section 164(f)(1): one-half of the tax. Schedule SE, line 13 is 50% of line 12, in whole dollars.
describe("the deduction for self-employment tax", () => {
  it.each(derived.cases)("$case ($source.origin)", ({ taxYear, lines }) => {
    expect(deduction(taxYear, lines[12])).toBe(lines[13]);
  });

  it.each(HELD)("is half of the tax in %i, half a dollar rounded up", (taxYear) => {
    expect(deduction(taxYear, 14_129)).toBe("7065");
    expect(deduction(taxYear, 0)).toBe("0");
  });
});
