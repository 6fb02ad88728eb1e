import { describe, expect, it } from "vitest";
import { addDays } from "../../../src/calendar/calendarDate";
import type { Payment } from "../../../src/calculation/penalty/underpaymentInterest";
import {
  failureToPayPenalty,
  type FailureToPayPenalty,
} from "../../../src/calculation/penalty/failureToPayPenalty";
import { rulebook } from "../../../src/rules/rulebook";
import { day, dueOn, paid, usd } from "../given";

const april15 = dueOn("2026-04-15");

/** The penalty on an amount due April 15, 2026, with what is given of the rest. */
function addition(
  unpaid: string,
  through: string,
  payments: readonly Payment[]
): FailureToPayPenalty {
  const input = { due: april15, unpaidTax: usd(unpaid), payments, through: day(through) };
  return failureToPayPenalty(input, rulebook.failureToPay);
}
const dollars = (...given: Parameters<typeof addition>): string =>
  addition(...given).amount.toFixed(2);

describe("a part payment", () => {
  // 26 U.S.C. 6651(b)(2): the amount unpaid at the beginning of the month.
  it.each([
    ["2026-05-15", "last day of the first month", "7.50"],
    ["2026-05-17", "second day of the second month", "10.00"],
    ["2026-06-15", "last day of the second month", "10.00"],
  ])("on %s, the %s, of half of $1,000 makes two months %s", (on, _which, amount) => {
    expect(dollars("1000", "2026-06-15", [paid(on, "500")])).toBe(amount);
  });

  // The cautious reading of "on or before the beginning of such month": no authority applies the other to the first day.
  it("on the first day of a month leaves that month charged in full", () => {
    expect(dollars("1000", "2026-06-15", [paid("2026-05-16", "500")])).toBe("10.00");
    expect(dollars("1000", "2026-04-16", [paid("2026-04-16", "1000")])).toBe("5.00");
  });

  it("after payment in full, months are charged no more", () => {
    const payments = [paid("2026-05-01", "400"), paid("2026-06-20", "600")];
    const found = addition("1000", "2028-12-31", payments);
    // 1,000 for one month, 600 for two
    expect(found.amount.toFixed(2)).toBe("11.00");
    expect(found.periods.map(({ months, base }) => [months, base.toString()])).toEqual([
      [1, "1000"],
      [2, "600"],
    ]);
  });

  it("does not count after the last date of the calculation", () => {
    expect(dollars("1000", "2026-06-15", [paid("2026-06-16", "1000")])).toBe("10.00");
  });

  it("counts the shares of all months toward the quarter", () => {
    // 48 months on 1,000, two on 500, no more: 240 + 5
    const found = addition("1000", "2036-04-15", [paid("2030-04-15", "500")]);
    expect(found.amount.toFixed(2)).toBe("245.00");
    const share = found.periods.reduce((sum, run) => sum.plus(run.share), usd(0));
    expect(share.toString()).toBe("0.25");
  });
});

describe("an installment agreement", () => {
  const underAgreement = (from: string, through: string): string =>
    failureToPayPenalty(
      {
        due: april15,
        unpaidTax: usd("1000"),
        payments: [],
        through: day(through),
        agreementOn: day(from),
      },
      rulebook.failureToPay
    ).amount.toFixed(2);

  // 26 U.S.C. 6651(h); 26 CFR 301.6651-1(a)(4): 0.25% for a month in which the agreement is in effect at any time.
  it.each([
    ["2026-05-15", "2026-06-15", "5.00"],
    ["2026-05-16", "2026-06-15", "7.50"],
    ["2026-06-15", "2026-06-15", "7.50"],
    ["2026-06-16", "2026-06-15", "10.00"],
    ["2026-03-01", "2026-06-15", "5.00"],
  ])("from %s makes the penalty through %s %s", (from, through, amount) => {
    expect(underAgreement(from, through)).toBe(amount);
  });

  it("reaches the quarter after a hundred months", () => {
    expect(underAgreement("2026-04-16", "2034-08-15")).toBe("250.00");
    expect(underAgreement("2026-04-16", "2034-07-15")).toBe("247.50");
    expect(underAgreement("2026-04-16", "2040-04-15")).toBe("250.00");
  });

  // Pub. L. 105-206, section 3303(b): section 6651(h) applies to months beginning after December 31, 1999.
  it.each([
    // months begin December 31, January 31
    ["1999-12-30", "2000-02-29", "7.50"],
    // January 1, February 1
    ["1999-12-31", "2000-02-29", "5.00"],
    // October 16, November 16, December 16, January 16
    ["1999-10-15", "2000-02-15", "17.50"],
  ])("on tax due %s makes the penalty through %s %s", (due, through, amount) => {
    const input = { due: dueOn(due), unpaidTax: usd("1000"), payments: [], through: day(through) };
    const agreed = { ...input, agreementOn: addDays(day(due), 1) };
    expect(failureToPayPenalty(agreed, rulebook.failureToPay).amount.toFixed(2)).toBe(amount);
  });
});
