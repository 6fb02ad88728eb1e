import { describe, expect, it } from "vitest";
import { smallBalanceException } from "../../../src/calculation/estimatedTax/smallBalanceException";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { usd } from "../given";

const applies = (tax: string, withholding: string, year = 2025): boolean =>
  smallBalanceException(calendarTaxYear(year), usd(tax), usd(withholding), rulebook);

describe("the exception for a small balance", () => {
  // 26 U.S.C. 6654(e)(1): no penalty if the tax, less the credit for withholding, is less than $1,000.
  it.each([
    ["9000", "8000", false],
    ["9000", "8000.01", true],
    ["999.99", "0", true],
    ["8999", "8000", true],
    ["1000", "0", false],
    ["0", "0", true],
    ["5000", "7000", true],
  ])("with tax of %s and withholding of %s applies: %s", (tax, withholding, expected) => {
    expect(applies(tax, withholding)).toBe(expected);
  });

  it("does not cover a year before the table", () => {
    expect(() => applies("9000", "8000", 1990)).toThrow(NotInTableError);
  });
});
