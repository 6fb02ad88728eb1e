import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareDates, earlierDate } from "../../../src/calendar/calendarDate";
import { charges } from "../../../src/calculation/penalty/charges";
import { chargesAccount } from "../../../src/calculation/penalty/chargesAccount";
import { rulebook } from "../../../src/rules/rulebook";
import { daysFrom, RUNS } from "../arbitrary";
import { day, paid } from "../given";
import { anyReturn, chargesInput } from "./givenReturn";

describe("penalties and interest asked for one date after another", () => {
  // 26 CFR 301.6651-1(c)(3): 90% was paid, and the rest comes with a timely return; interest counts from April 15 all the same.
  it("have no failure-to-pay penalty on an early date that the 90% test removes in the end", () => {
    const input = chargesInput({
      taxYear: 2025,
      totalTax: "20000",
      paidOnTime: "18000",
      payments: [paid("2026-10-15", "2000")],
      filedOn: "2026-10-15",
      validExtension: true,
    });
    const through = chargesAccount(input, rulebook);
    for (const date of [day("2026-04-15"), day("2026-06-30"), day("2026-10-15")]) {
      const found = through(date, date);
      expect(found.failureToPay.amount.toString()).toBe("0");
      expect(found.excused?.citation).toContain("301.6651-1(c)(3)");
    }
    expect(through(day("2026-10-15"), day("2026-10-15")).interestOnTax.amount.toFixed(2)).toBe(
      charges(input, rulebook).interestOnTax.amount.toFixed(2)
    );
  });

  it("are those of a fresh calculation through each date after the filing", () => {
    const asked = fc.array(daysFrom("2023-01-01", "2026-12-31"), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(anyReturn, asked, (input, days) => {
        const through = chargesAccount(input, rulebook);
        for (const date of days.sort(compareDates)) {
          const found = through(date, earlierDate(input.filedOn, date));
          if (date < input.filedOn) continue;
          const fresh = charges({ ...input, through: date }, rulebook);
          expect(found.total.equals(fresh.total)).toBe(true);
          expect(found.interestOnTax.amount.equals(fresh.interestOnTax.amount)).toBe(true);
        }
      }),
      RUNS
    );
  });
});
