import { describe, expect, it } from "vitest";
import { lastDateToPayNotice } from "../../../src/calculation/account/lastDateToPayNotice";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { written } from "../../../src/calendar/calendarDate";
import { day, state, usd } from "../given";

const lastDate = (noticeOn: string, demanded: string, code?: string): string =>
  written(
    lastDateToPayNotice(
      day(noticeOn),
      usd(demanded),
      code === undefined ? undefined : state(code),
      rulebook
    )
  );

// 26 U.S.C. 6601(e)(2)(A), (e)(3); 26 CFR 301.6601-1(f)(3) to (5). The dates are counted on a calendar from the cited rule.
describe("the last date to pay a notice", () => {
  it.each([
    ["2025-06-02", "2025-06-23", "a Monday: the example of 21 days"],
    ["2025-06-07", "2025-06-30", "Saturday, June 28, moves to Monday"],
    ["2025-06-08", "2025-06-30", "Sunday, June 29, moves to Monday"],
    ["2025-06-13", "2025-07-07", "Friday, July 4, is a legal holiday before a weekend"],
    ["2026-03-26", "2026-04-17", "Thursday, April 16, is Emancipation Day"],
  ])("of %s is %s: %s", (noticeOn, expected) => {
    expect(lastDate(noticeOn, "5000")).toBe(expected);
  });

  it("counts ten business days where the notice demands $100,000 or more", () => {
    expect(lastDate("2025-06-02", "99999.99")).toBe("2025-06-23");
    expect(lastDate("2025-06-02", "100000")).toBe("2025-06-16");
    // A Saturday: the first business day is Monday, June 9; June 19 is a legal holiday.
    expect(lastDate("2025-06-07", "100000")).toBe("2025-06-23");
  });

  it("leaves out a holiday of the taxpayer's state among the business days", () => {
    // Emancipation Day on Thursday, April 16, 2026, and Patriots' Day on Monday, April 20
    expect(lastDate("2026-04-06", "100000", "VA")).toBe("2026-04-21");
    expect(lastDate("2026-04-06", "100000", "MA")).toBe("2026-04-22");
  });

  it("is refused for a notice outside the years of the holidays or before the law", () => {
    expect(() => lastDate("2029-01-02", "100")).toThrow(NotInTableError);
    expect(() => lastDate("1996-12-31", "100")).toThrow(NotInTableError);
  });
});
