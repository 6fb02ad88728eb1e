import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, addMonths, compareDates } from "../../../src/calendar/calendarDate";
import { monthsBegun } from "../../../src/calendar/monthOfDelinquency";
import type { Payment } from "../../../src/calculation/penalty/underpaymentInterest";
import {
  failureToPayPenalty,
  type FailureToPayPenalty,
} from "../../../src/calculation/penalty/failureToPayPenalty";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/failure-to-file-and-pay.json";
import { daysFrom, dollarsUpTo, RUNS } from "../arbitrary";
import { day, dueOn, paid, usd } from "../given";

const april15 = dueOn("2026-04-15");

/** The penalty on an amount due April 15, 2026, with what is given of the rest. */
function addition(
  unpaid: string,
  through: string,
  payments: readonly Payment[] = [],
  due = april15
): FailureToPayPenalty {
  const input = { due, unpaidTax: usd(unpaid), payments, through: day(through) };
  return failureToPayPenalty(input, rulebook.failureToPay);
}
const dollars = (...given: Parameters<typeof addition>): string =>
  addition(...given).amount.toFixed(2);

describe("failure to pay as published", () => {
  it.each(published.failureToPay)("$case ($source.document)", ({ inputs, expected }) => {
    const { due, unpaid, paidOn } = inputs;
    const found = addition(unpaid, paidOn, [paid(paidOn, unpaid)], dueOn(due));
    expect(found.amount.toFixed(2)).toBe(expected.addition);
    expect(found.periods.map(({ months, base }) => [months, base.toString()])).toEqual([
      [expected.months, expected.base],
    ]);
  });
});

describe("failure to pay $1,000", () => {
  // 26 CFR 301.6651-1(b)(1): a part of a month counts whole; the month that ends on a day holds it.
  it.each([
    ["2026-04-15", "0.00"],
    ["2026-04-16", "5.00"],
    ["2026-05-14", "5.00"],
    ["2026-05-15", "5.00"],
    ["2026-05-16", "10.00"],
    ["2026-06-15", "10.00"],
    ["2026-06-16", "15.00"],
    ["2027-04-15", "60.00"],
    ["2027-04-16", "65.00"],
  ])("through %s costs %s", (through, amount) => {
    expect(dollars("1000", through)).toBe(amount);
    expect(dollars("1000", "2030-12-31", [paid(through, "1000")])).toBe(amount);
  });

  // 26 U.S.C. 6651(a)(2): 25% in the aggregate, 50 months at half a percent. April 15, 2026 and 50 months: June 15, 2030.
  it.each([
    ["2030-05-15", "245.00"],
    ["2030-05-16", "250.00"],
    ["2030-06-15", "250.00"],
    ["2030-06-16", "250.00"],
    ["2036-04-15", "250.00"],
  ])("through %s costs %s, the most being a quarter", (through, amount) => {
    expect(dollars("1000", through)).toBe(amount);
  });

  // 26 U.S.C. 7503; 26 CFR 301.6651-1(b)(3): due Saturday April 15, 2023, timely through Tuesday the 18th.
  it.each([
    ["2023-04-17", "0.00"],
    ["2023-04-18", "0.00"],
    ["2023-04-19", "5.00"],
    ["2023-05-15", "5.00"],
    ["2023-05-16", "10.00"],
  ])("due on a Saturday and paid %s costs %s", (on, amount) => {
    const due = dueOn("2023-04-15", "2023-04-18");
    expect(dollars("1000", on, [paid(on, "1000")], due)).toBe(amount);
  });

  // 26 CFR 301.6651-1(b)(1): months of a due date at the end of a month end with theirs.
  it.each([
    ["2026-03-31", "5.00"],
    ["2026-04-01", "10.00"],
    ["2026-04-30", "10.00"],
    ["2026-05-01", "15.00"],
  ])("due on the last of February and paid %s costs %s", (on, amount) => {
    expect(dollars("1000", on, [paid(on, "1000")], dueOn("2026-02-28"))).toBe(amount);
  });
});

describe("failure to pay", () => {
  // Pub. L. 91-172, section 943(d), 83 Stat. 729: returns due after December 31, 1969.
  it("is refused for months before the law began", () => {
    expect(() => dollars("1000", "1970-06-15", [], dueOn("1969-12-30"))).toThrow(NotInTableError);
    expect(dollars("1000", "1970-01-15", [], dueOn("1970-01-01"))).toBe("5.00");
  });

  // 26 U.S.C. 6651(a)(2), the same words before section 6651(h) came in with the year 2000.
  it("was at most a quarter before 2000 too", () => {
    expect(dollars("1000", "1999-12-31", [], dueOn("1990-04-15"))).toBe("250.00");
  });

  it("of nothing is nothing", () => {
    expect(addition("0", "2030-12-31")).toMatchObject({ periods: [] });
  });

  it("is half a percent by months begun, at most a quarter", () => {
    fc.assert(
      fc.property(dollarsUpTo(100_000), daysFrom("2026-04-16", "2036-12-31"), (unpaid, through) => {
        const input = { due: april15, unpaidTax: unpaid, payments: [], through };
        const months = Math.min(50, monthsBegun(april15.countedFrom, through));
        const found = failureToPayPenalty(input, rulebook.failureToPay).amount;
        expect(found.equals(unpaid.times(months).times("0.005"))).toBe(true);
      }),
      RUNS
    );
  });

  it("never falls when a payment comes later, and never rises by one", () => {
    fc.assert(
      fc.property(
        dollarsUpTo(20_000),
        fc.integer({ min: 1, max: 1500 }),
        fc.integer({ min: 0, max: 400 }),
        (unpaid, daysLate, delay) => {
          const through = day("2032-01-01");
          const half = unpaid.div(2);
          const paidOn = (days: number): readonly Payment[] => [
            { date: addDays(april15.countedFrom, days), amount: half },
          ];
          const amounts = [paidOn(daysLate), paidOn(daysLate + delay), []].map(
            (payments) =>
              failureToPayPenalty(
                { due: april15, unpaidTax: unpaid, payments, through },
                rulebook.failureToPay
              ).amount
          );
          const [early, late, never] = amounts;
          expect(early && late && early.lessThanOrEqualTo(late)).toBe(true);
          expect(late && never && late.lessThanOrEqualTo(never)).toBe(true);
        }
      ),
      RUNS
    );
  });

  it("charges periods of months that follow one another", () => {
    fc.assert(
      fc.property(
        fc.array(daysFrom("2026-04-16", "2030-12-31"), { maxLength: 4 }),
        (daysOfPayment) => {
          const payments = [...daysOfPayment]
            .sort(compareDates)
            .map((on): Payment => ({ date: on, amount: usd("100") }));
          const { periods: charged } = addition("1000", "2030-12-31", payments);
          let next = 1;
          for (const run of charged) {
            expect(run.firstMonth).toBe(next);
            expect(run.from).toBe(addDays(addMonths(april15.countedFrom, next - 1), 1));
            expect(run.to).toBe(addMonths(april15.countedFrom, next + run.months - 1));
            expect(run.amount.equals(run.base.times(run.share))).toBe(true);
            next += run.months;
          }
        }
      ),
      RUNS
    );
  });
});
