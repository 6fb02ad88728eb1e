import { describe, expect, it } from "vitest";
import { grossIncome } from "../../../src/calculation/liability/grossIncome";
import { taxableIncome } from "../../../src/calculation/liability/taxableIncome";
import { taxLessCredits } from "../../../src/calculation/liability/taxLessCredits";
import { rulebook } from "../../../src/rules/rulebook";
import { known, statusOf, year, type Written } from "./givenTax";

const taxOf = (status: string, written: Written) => {
  const [of, who, items] = [year(2025), statusOf(status), known(written)];
  const gross = grossIncome(of, who, items, rulebook);
  const taxable = taxableIncome(of, who, items, gross, "standard", rulebook);
  return taxLessCredits(of, who, items, gross, taxable, rulebook);
};
const lines = (...given: Parameters<typeof taxOf>) =>
  taxOf(...given).lines.map(({ what, amount }) => [what, amount.toNumber()]);

describe("income tax less credits", () => {
  // Form 1040, lines 16 to 21; Schedule 3, lines 1, 3 and 6d: the tax on 60,000 is 8,120.
  it("takes off each credit as given, in the order of the return", () => {
    const given = {
      wages: 75_750,
      credits: 100,
      elderlyCredit: 50,
      educationCredits: 1_500,
      foreignTaxCredit: 300,
      otherDependents: 1,
    };
    expect(lines("single", given)).toEqual([
      ["Income tax", 8_120],
      ["Less foreign tax credit", -300],
      ["Less education credits", -1_500],
      ["Less credit for the elderly", -50],
      ["Less child tax credit and credit for other dependents", -500],
      ["Less other credits", -100],
    ]);
    expect(taxOf("single", given).amount.toNumber()).toBe(5_670);
  });

  // Schedule 8812, Credit Limit Worksheet A: the child tax credit is limited to the tax less the other three.
  it("leaves to the child tax credit what the credits before it leave", () => {
    const given = { wages: 30_000, childrenUnder17: 1, foreignTaxCredit: 400, credits: 100 };
    expect(lines("head", given)).toEqual([
      ["Income tax", 638],
      ["Less foreign tax credit", -400],
      ["Less child tax credit and credit for other dependents", -238],
    ]);
    expect(taxOf("head", given).amount.toNumber()).toBe(0);
  });

  // 26 U.S.C. 26(a): nonrefundable credits are limited to the tax, the minimum tax included.
  it("stops at zero, after the minimum tax too", () => {
    const given = { wages: 150_000, minimumTaxItems: 200_000, educationCredits: 900_000 };
    expect(lines("single", given)).toEqual([
      ["Income tax", 25_067],
      ["Alternative minimum tax", 43_483],
      ["Less education credits", -68_550],
    ]);
    expect(taxOf("single", given).amount.toNumber()).toBe(0);
  });
});
