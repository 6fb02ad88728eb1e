import { describe, expect, it } from "vitest";
import { netInvestmentIncome } from "../../../src/calculation/liability/netInvestmentIncome";
import { known, usd, type Written } from "./givenTax";

const investment = (written: Written, gain = 0, excessLoss = 0): number =>
  netInvestmentIncome(known(written), usd(gain), usd(excessLoss)).toNumber();

// 26 U.S.C. 1411(c)(1)(A): interest, dividends, rents and net gain.
describe("net investment income", () => {
  it("is interest, dividends, gains and rents, and nothing else", () => {
    expect(investment({ interest: 1, ordinaryDividends: 2, rentalIncome: 8 }, 4)).toBe(15);
    expect(investment({ wages: 1, businessProfit: 1, partnershipIncome: 1, pensions: 1 })).toBe(0);
  });

  it("is never below zero", () => {
    expect(investment({ interest: 5, rentalIncome: -20 })).toBe(0);
    expect(investment({ interest: 5 }, -3_000)).toBe(0);
  });

  // 26 U.S.C. 1411(c)(1)(B): deductions allowed by the subtitle, so no loss that section 461(l) disallows. The law is silent on its division.
  it("takes only the part of a rental loss that the year deducts", () => {
    expect(investment({ interest: 400_000, rentalIncome: -500_000 }, 0, 187_000)).toBe(87_000);
    const both = { interest: 400_000, rentalIncome: -200_000, partnershipIncome: -600_000 };
    expect(investment(both, 0, 400_000)).toBe(300_000);
    const other = { interest: 400_000, rentalIncome: 50_000, businessProfit: -800_000 };
    expect(investment(other, 0, 437_000)).toBe(450_000);
  });
});
