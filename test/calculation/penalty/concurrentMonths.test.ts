import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareDates } from "../../../src/calendar/calendarDate";
import { concurrentMonths } from "../../../src/calculation/penalty/concurrentMonths";
import {
  failureToPayPenalty,
  type FailureToPayPenalty,
} from "../../../src/calculation/penalty/failureToPayPenalty";
import type { Payment } from "../../../src/calculation/penalty/underpaymentInterest";
import { rulebook } from "../../../src/rules/rulebook";
import { daysFrom, RUNS } from "../arbitrary";
import { day, dueOn, paid, usd } from "../given";

function failureToPay(
  due: string,
  unpaid: string,
  payments: readonly Payment[],
  through = "2032-12-31"
): FailureToPayPenalty {
  return failureToPayPenalty(
    { due: dueOn(due), unpaidTax: usd(unpaid), payments, through: day(through) },
    rulebook.failureToPay
  );
}
const reduction = (
  filingDue: string,
  months: number,
  paymentDue: string,
  addition: FailureToPayPenalty
): string => concurrentMonths(dueOn(filingDue), months, dueOn(paymentDue), addition).toFixed(2);

describe("the months that have both penalties", () => {
  // 26 CFR 301.6651-1(f): Example 1(a) takes 4 of 5 months on $100, Example 2 takes 5 of 8 on $500.
  it("are those of the regulation's examples", () => {
    const first = failureToPay("1970-04-15", "100", [paid("1970-08-21", "100")]);
    expect(reduction("1970-04-15", 4, "1970-04-15", first)).toBe("2.00");
    const second = failureToPay("1970-04-15", "500", [paid("1970-12-02", "500")]);
    expect(reduction("1970-04-15", 5, "1970-04-15", second)).toBe("12.50");
  });

  it("begin with the seventh month of failure to pay for an extended return", () => {
    // April 16 is the first, October 16 the seventh; 600 is paid in the sixth, so 400 bears both
    const addition = failureToPay("2025-04-15", "1000", [paid("2025-10-01", "600")]);
    expect(reduction("2025-10-15", 2, "2025-04-15", addition)).toBe("4.00");
  });

  it("are none when the tax was paid before the extended return was late", () => {
    const addition = failureToPay("2025-04-15", "1000", [paid("2025-10-15", "1000")]);
    expect(reduction("2025-10-15", 5, "2025-04-15", addition)).toBe("0.00");
    const oneDayLater = failureToPay("2025-04-15", "1000", [paid("2025-10-16", "1000")]);
    expect(reduction("2025-10-15", 5, "2025-04-15", oneDayLater)).toBe("5.00");
  });

  it("take each month at what was unpaid in it", () => {
    const addition = failureToPay("2025-04-15", "1000", [
      paid("2025-05-15", "500"),
      paid("2025-07-15", "250"),
    ]);
    // 1,000, 500, 500, 250 at 0.5%
    expect(reduction("2025-04-15", 4, "2025-04-15", addition)).toBe("11.25");
  });

  it("are none where nothing is charged for failure to pay", () => {
    expect(reduction("2025-04-15", 5, "2025-04-15", { periods: [], amount: usd(0) })).toBe("0.00");
  });

  it("stop where failure to pay has reached its quarter", () => {
    const addition = failureToPay("2020-07-15", "1000", []);
    // failure to file due so late that only its first two months lie among the fifty
    expect(reduction("2024-07-15", 5, "2020-07-15", addition)).toBe("10.00");
  });

  // No authority for dates that a postponement set apart: a month of failure to file goes with the month in which it begins.
  it("pair with the month in which they begin where the day numbers differ", () => {
    const addition = failureToPay("2021-05-17", "1000", [paid("2021-10-17", "500")]);
    // October 16 lies in the fifth month (September 18 to October 17), on 1,000; the next on 500
    expect(reduction("2021-10-15", 2, "2021-05-17", addition)).toBe("7.50");
  });

  it("never take off more than the failure-to-pay penalty, and more months never less", () => {
    fc.assert(
      fc.property(
        fc.array(daysFrom("2025-04-16", "2026-12-31"), { maxLength: 3 }),
        fc.integer({ min: 1, max: 4 }),
        fc.boolean(),
        (daysOfPayment, months, extended) => {
          const payments = [...daysOfPayment]
            .sort(compareDates)
            .map((on) => ({ date: on, amount: usd("300") }));
          const addition = failureToPay("2025-04-15", "1000", payments, "2026-12-31");
          const due = dueOn(extended ? "2025-10-15" : "2025-04-15");
          const off = concurrentMonths(due, months, dueOn("2025-04-15"), addition);
          const offMore = concurrentMonths(due, months + 1, dueOn("2025-04-15"), addition);
          expect(off.lessThanOrEqualTo(addition.amount)).toBe(true);
          expect(off.lessThanOrEqualTo(offMore)).toBe(true);
          expect(off.lessThanOrEqualTo(usd("1000").times("0.005").times(months))).toBe(true);
        }
      ),
      RUNS
    );
  });
});
