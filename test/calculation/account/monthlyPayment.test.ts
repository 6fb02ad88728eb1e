import { describe, expect, it } from "vitest";
import {
  monthlyPayment,
  type MonthlyPaymentInput,
} from "../../../src/calculation/account/monthlyPayment";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { day, dueOn, usd } from "../given";

function payment(given: Partial<MonthlyPaymentInput>): readonly [number, number] {
  const input = {
    owed: usd("12000"),
    unpaidTax: usd("12000"),
    agreementOn: day("2026-10-15"),
    months: 1,
    due: dueOn("2026-04-15"),
    isHalved: false,
    ...given,
  };
  const found = monthlyPayment(input, rulebook);
  return [found.payment.toNumber(), found.penaltiesAndInterest.toNumber()];
}

/** Interest of a dollar over days at 7%, in binary numbers: no code of src. */
const growth = (days: number): number => (1 + 0.07 / 365) ** days;
const cents = (amount: number): number => Math.round(amount * 100) / 100;

// 26 U.S.C. 6601(a), 6622 and 6651(a)(2), (h); 7% in the fourth quarter of 2026 (Rev. Rul. 2026-15). Computed from the cited rules.
describe("the monthly payment", () => {
  const interest = cents(12_000 * (growth(31) - 1));

  it("of one month pays the balance, a month of penalty and 31 days of interest", () => {
    expect(payment({})).toEqual([12_000 + 60 + interest, 60 + interest]);
  });

  it("has half the penalty under an agreement with a return filed on time", () => {
    expect(payment({ isHalved: true })).toEqual([12_000 + 30 + interest, 30 + interest]);
  });

  it("has penalty on the tax alone, and interest on all that is billed", () => {
    expect(payment({ unpaidTax: usd("10000") })).toEqual([12_000 + 50 + interest, 50 + interest]);
  });

  it("has no penalty once the months before the agreement have reached 25%", () => {
    // 50 months from April 15, 2022 end on June 15, 2026.
    expect(payment({ due: dueOn("2022-04-15") })).toEqual([12_000 + interest, interest]);
  });

  it("of two months is the smallest that pays everything with the second", () => {
    const [amount, cost] = payment({ months: 2 });
    const first = 12_000 * (growth(31) - 1);
    // one month on 12,000, and one on what the first payment leaves; 30 days on that and on the interest to date
    const left = 12_000 - amount;
    const whole = cents(60 + left * 0.005) + cents((left + first) * growth(30) - left);
    expect(cost).toBe(cents(whole));
    expect(2 * amount).toBeGreaterThanOrEqual(12_000 + cost);
    expect(2 * (amount - 0.01)).toBeLessThan(12_000 + cost);
  });

  it("is nothing of a balance of nothing", () => {
    expect(payment({ owed: usd("0"), unpaidTax: usd("0"), months: 5 })).toEqual([0, 0]);
  });

  it("is refused beyond the published rates unless one is assumed", () => {
    expect(() => payment({ months: 6 })).toThrow(NotInTableError);
    expect(payment({ months: 6, assumedRate: "latest" })[0]).toBeGreaterThan(2_000);
  });
});
