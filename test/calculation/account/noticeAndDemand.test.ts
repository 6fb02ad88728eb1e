import { describe, expect, it } from "vitest";
import {
  noticeAndDemand,
  type NoticeAndDemand,
} from "../../../src/calculation/account/noticeAndDemand";
import { rulebook } from "../../../src/rules/rulebook";
import { chargesOf } from "../penalty/givenReturn";
import { written } from "../../../src/calendar/calendarDate";
import { day, paid, usd } from "../given";

/** A notice of June 2, 2026 for $10,000 of tax of 2025, nothing of it paid on time. */
function notice(...payments: ReturnType<typeof paid>[]): NoticeAndDemand {
  const atNotice = chargesOf({
    taxYear: 2025,
    totalTax: "10000",
    paidOnTime: "0",
    payments,
    filedOn: "2026-04-15",
    through: "2026-06-02",
  });
  const totalTax = usd("10000");
  return noticeAndDemand(
    { noticeOn: day("2026-06-02"), totalTax, payments, atNotice, state: undefined },
    rulebook
  );
}

// 26 U.S.C. 6601(e)(2)(A), (e)(3). 48 days at 6% (the revenue ruling), two months at 0.5%. Computed from the cited rules.
describe("a notice and demand", () => {
  const interest = Number((10_000 * ((1 + 0.06 / 365) ** 48 - 1)).toFixed(2));

  it("demands tax, penalties and interest to its date", () => {
    const found = notice();
    expect(found.demanded.toNumber()).toBe(10_100 + interest);
    expect(found.failureToPay.toNumber()).toBe(100);
    expect(written(found.payBy)).toBe("2026-06-23");
  });

  it("takes off what is paid by its date, its own date included, and nothing later", () => {
    const found = notice(paid("2026-06-02", 4_000), paid("2026-06-03", 1_000));
    expect(found.demanded.toNumber()).toBe(6_100 + interest);
    expect(notice(paid("2026-06-02", 20_000)).demanded.toNumber()).toBe(0);
  });

  it("counts a payment within the time to pay as made on its date, for interest", () => {
    const payments = ["2026-06-01", "2026-06-03", "2026-06-23", "2026-06-24"];
    const found = notice(...payments.map((on) => paid(on, 1)));
    expect(found.paymentsForInterest.map(({ date }) => date)).toEqual([
      day("2026-06-01"),
      day("2026-06-02"),
      day("2026-06-02"),
      day("2026-06-24"),
    ]);
  });
});
