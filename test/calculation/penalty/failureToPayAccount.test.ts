import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareDates } from "../../../src/calendar/calendarDate";
import { failureToPayAccount } from "../../../src/calculation/penalty/failureToPayAccount";
import { failureToPayPenalty } from "../../../src/calculation/penalty/failureToPayPenalty";
import { rulebook } from "../../../src/rules/rulebook";
import { daysFrom, dollarsUpTo, RUNS } from "../arbitrary";
import { day, dueOn, usd } from "../given";

const rates = rulebook.failureToPay;

describe("the failure-to-pay penalty asked for one date after another", () => {
  // 26 CFR 301.6651-1(f), Example 2: $500 due April 15, 1970, paid December 2: eight months of 0.5%.
  it("grows by the month to the amount of the example", () => {
    const due = dueOn("1970-04-15");
    const through = failureToPayAccount({ due, unpaidTax: usd(500), payments: [] }, rates);
    const amounts = ["1970-04-15", "1970-04-16", "1970-05-15", "1970-05-16", "1970-12-02"].map(
      (date) => through(day(date)).amount.toFixed(2)
    );
    expect(amounts).toEqual(["0.00", "2.50", "2.50", "5.00", "20.00"]);
  });

  it("keeps its periods when later dates are asked for", () => {
    const due = dueOn("2026-04-15");
    const through = failureToPayAccount({ due, unpaidTax: usd(500), payments: [] }, rates);
    const may = through(day("2026-05-20"));
    through(day("2026-12-31"));
    expect(may.periods.map(({ months }) => months)).toEqual([2]);
  });

  it("is the penalty of a fresh calculation through each date, over the same months", () => {
    const dates = daysFrom("2023-04-16", "2029-12-31");
    const payments = fc.array(fc.tuple(dates, dollarsUpTo(3_000)), { maxLength: 6 });
    const asked = fc.array(dates, { minLength: 1, maxLength: 8 });
    const maybe = fc.option(dates, { nil: undefined });
    fc.assert(
      fc.property(
        dollarsUpTo(10_000),
        payments,
        asked,
        maybe,
        (unpaidTax, drawn, days, agreementOn) => {
          const input = {
            due: dueOn("2023-04-15", "2023-04-18"),
            unpaidTax,
            agreementOn,
            payments: drawn
              .map(([date, amount]) => ({ date, amount }))
              .sort((one, other) => compareDates(one.date, other.date)),
          };
          const through = failureToPayAccount(input, rates);
          for (const date of days.sort(compareDates)) {
            const found = through(date);
            const fresh = failureToPayPenalty({ ...input, through: date }, rates);
            expect(found.amount.equals(fresh.amount)).toBe(true);
            const monthsOf = ({ periods }: typeof found): number =>
              periods.reduce((sum, { months }) => sum + months, 0);
            expect(monthsOf(found)).toBe(monthsOf(fresh));
          }
        }
      ),
      RUNS
    );
  });
});
