import { describe, expect, it } from "vitest";
import { interestAfterNotice } from "../../../src/calculation/account/interestAfterNotice";
import { noticeAndDemand } from "../../../src/calculation/account/noticeAndDemand";
import type { UnderpaymentInterest } from "../../../src/calculation/penalty/underpaymentInterest";
import { ZERO } from "../../../src/money/dollars";
import { rulebook } from "../../../src/rules/rulebook";
import { chargesOf } from "../penalty/givenReturn";
import { day, paid, usd } from "../given";

/** A penalty of $500 that a notice of June 2, 2025 bills, with $10,000 of tax paid before it. */
function interest(through: string, ...payments: ReturnType<typeof paid>[]): UnderpaymentInterest {
  const totalTax = usd("10000");
  // 26 U.S.C. 6651(a)(2): ten months at 0.5%, from April 16, 2024
  const atNotice = chargesOf({
    taxYear: 2023,
    totalTax: "10000",
    paidOnTime: "0",
    payments: [paid("2025-02-14", "10000")],
    filedOn: "2024-04-15",
  });
  expect(atNotice.failureToPay.amount.toFixed(2)).toBe("500.00");
  const input = {
    noticeOn: day("2025-06-02"),
    totalTax,
    payments: [paid("2025-02-14", "10000"), ...payments],
    atNotice,
    state: undefined,
  };
  const notice = noticeAndDemand(input, rulebook);
  return interestAfterNotice(notice, totalTax, { table: rulebook.underpaymentRate })(day(through));
}

const daysOf = ({ periods }: UnderpaymentInterest): number =>
  periods().reduce((sum, { period }) => sum + period.days, 0);

// 26 U.S.C. 6601(e)(2)(A); 26 CFR 301.6601-1(f)(3): the example INT-21, computed from the cited rule.
describe("interest on a failure-to-pay penalty after a notice", () => {
  it("is none if the penalty is paid on the 21st calendar day", () => {
    const found = interest("2025-12-31", paid("2025-06-23", "500"));
    expect([found.amount, daysOf(found)]).toEqual([ZERO, 0]);
  });

  it("runs from the date of the notice if the penalty is paid a day later: 22 days", () => {
    const found = interest("2025-12-31", paid("2025-06-24", "500"));
    expect(daysOf(found)).toBe(22);
    expect(found.periods()[0]?.period.from).toBe(day("2025-06-02"));
    // 7% in the second quarter of 2025 (the revenue ruling)
    expect(found.amount.toFixed(2)).toBe((500 * ((1 + 0.07 / 365) ** 22 - 1)).toFixed(2));
  });

  it("runs on what is left where a part is paid in time", () => {
    // Section 6601(e)(3): "on the amount so paid"
    const found = interest("2025-06-30", paid("2025-06-20", "300"));
    expect(found.amount.toFixed(2)).toBe((200 * ((1 + 0.07 / 365) ** 28 - 1)).toFixed(2));
  });

  it("is none before the notice, nor on its date", () => {
    expect(interest("2025-06-01").amount.toFixed(2)).toBe("0.00");
    expect(interest("2025-06-02").amount.toFixed(2)).toBe("0.00");
    expect(interest("2025-06-03").amount.toFixed(2)).toBe("0.10");
  });
});
