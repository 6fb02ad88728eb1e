import { describe, expect, it } from "vitest";
import { requiredInstallments } from "../../../src/calculation/estimatedTax/requiredInstallments";
import { FILER_TYPES } from "../../../src/calculation/filerType";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { ZERO } from "../../../src/money/dollars";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";

const year = calendarTaxYear(2026);

// 26 U.S.C. 6654(d)(1)(A): 25 percent each; (j)(3)(A): 50 percent in the first of three; (i)(1): one of 100 percent.
describe("the required installments", () => {
  it.each([
    ["resident", false, ["1: 0.25", "2: 0.25", "3: 0.25", "4: 0.25"]],
    ["out of country", false, ["1: 0.25", "2: 0.25", "3: 0.25", "4: 0.25"]],
    ["nonresident", false, ["1: 0.5", "2: 0.25", "3: 0.25"]],
    ["resident", true, ["4: 1"]],
    ["nonresident", true, ["3: 1"]],
  ] as const)("of a filer who is %s, farmer %s", (filerType, farmerOrFisherman, shares) => {
    const found = requiredInstallments(year, filerType, farmerOrFisherman, rulebook);
    expect(found.map(({ number, share }) => `${String(number)}: ${share.toFixed()}`)).toEqual(
      shares
    );
  });

  it("add up to the required annual payment", () => {
    for (const filerType of FILER_TYPES)
      for (const isFarmer of [true, false]) {
        const found = requiredInstallments(year, filerType, isFarmer, rulebook);
        expect(found.reduce((sum, { share }) => sum.plus(share), ZERO).toFixed()).toBe("1");
      }
  });

  it("are not in the table before 2003", () => {
    const early = calendarTaxYear(2002);
    expect(() => requiredInstallments(early, "resident", false, rulebook)).toThrow(NotInTableError);
  });
});
