import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareDates } from "../../../src/calendar/calendarDate";
import { interestAccount } from "../../../src/calculation/penalty/interestAccount";
import { underpaymentInterest } from "../../../src/calculation/penalty/underpaymentInterest";
import { rulebook } from "../../../src/rules/rulebook";
import { daysFrom, dollarsUpTo, RUNS } from "../arbitrary";
import { day, paid, usd } from "../given";

const rates = { table: rulebook.underpaymentRate };

describe("interest asked for one date after another", () => {
  // 26 CFR 301.6622-1, 6% of the second quarter of 2002: the printed factor .012570476 on $10,000 for 76 days.
  it("is the printed interest on each date, and asking twice changes nothing", () => {
    const through = interestAccount(usd(10_000), day("2002-04-15"), [], rates);
    expect(through(day("2002-04-15")).amount.toFixed(2)).toBe("0.00");
    expect(through(day("2002-06-30")).amount.toFixed(2)).toBe("125.70");
    expect(through(day("2002-06-30")).amount.toFixed(2)).toBe("125.70");
  });

  it("keeps its periods when later dates are asked for", () => {
    const payments = [paid("2002-05-15", "4000"), paid("2002-09-01", "6000")];
    const through = interestAccount(usd(10_000), day("2002-04-15"), payments, rates);
    const june = through(day("2002-06-30"));
    through(day("2002-12-31"));
    expect(june.periods().map(({ period }) => period.days)).toEqual([30, 46]);
  });

  it("is the interest of a fresh calculation through each date", () => {
    const dates = daysFrom("2023-04-16", "2026-12-31");
    const payments = fc.array(fc.tuple(dates, dollarsUpTo(3_000)), { maxLength: 6 });
    const asked = fc.array(dates, { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(dollarsUpTo(10_000), payments, asked, (amount, drawn, days) => {
        const paidLater = drawn
          .map(([date, part]) => ({ date, amount: part }))
          .sort((one, other) => compareDates(one.date, other.date));
        const due = day("2023-04-15");
        const through = interestAccount(amount, due, paidLater, rates);
        for (const date of days.sort(compareDates)) {
          const found = through(date);
          const fresh = underpaymentInterest(amount, due, paidLater, date, rates);
          expect(found.amount.equals(fresh.amount)).toBe(true);
          expect(found.periods()).toEqual(fresh.periods());
        }
      }),
      RUNS
    );
  });
});
