import { describe, expect, it } from "vitest";
import { addDays } from "../../src/calendar/calendarDate";
import {
  calendarTaxYear,
  fiscalTaxYear,
  includesYear,
  isFiscalYear,
  yearAfter,
  yearsBefore,
} from "../../src/calculation/taxYear";
import { day, fiscalYear } from "./given";

describe("a tax year", () => {
  it("of the calendar runs from January 1 to December 31", () => {
    expect(calendarTaxYear(2025)).toEqual({
      firstDay: day("2025-01-01"),
      lastDay: day("2025-12-31"),
    });
  });

  // 26 U.S.C. 441(e): a fiscal year is twelve months ending on the last day of a month.
  it.each([
    ["2025-06-30", "2024-07-01"],
    ["2024-02-29", "2023-03-01"],
    ["2025-02-28", "2024-03-01"],
    ["2025-12-31", "2025-01-01"],
  ])("may end on %s, having begun on %s", (last, first) => {
    expect(fiscalTaxYear(day(last))).toEqual({ firstDay: day(first), lastDay: day(last) });
  });

  // 26 CFR 1.441-2(a)(2): as many as six days before the end of the month, or three days after it.
  it.each(["2025-06-23", "2025-07-04", "2024-02-22", "2024-03-04", "2025-12-24", "2026-01-04"])(
    "cannot end on %s",
    (last) => {
      expect(fiscalTaxYear(day(last))).toBeUndefined();
    }
  );

  // 26 U.S.C. 441(f)(2)(A); 26 CFR 1.441-2(c)(3), Example 2: any day from May 25 to June 3 counts as May 31.
  it.each(["2025-05-25", "2025-05-30", "2025-06-01", "2025-06-03"])(
    "of 52 or 53 weeks that ends on %s is treated as ending on May 31",
    (last) => {
      expect(fiscalTaxYear(day(last))).toEqual({
        firstDay: day("2024-06-01"),
        lastDay: day("2025-05-31"),
        closesOn: day(last),
      });
    }
  );

  // 26 CFR 1.441-2(a)(4), Example: the last Saturday in November 2001, and the Saturday nearest to its end.
  it.each(["2001-11-24", "2001-12-01"])("ends with November 2001 if it ends on %s", (last) => {
    expect(fiscalTaxYear(day(last))?.lastDay).toBe(day("2001-11-30"));
  });

  // 26 U.S.C. 441(e), second sentence: the elected 52/53-week year is a fiscal year.
  it.each([
    ["2025-12-27", true],
    ["2026-01-03", true],
    ["2025-12-31", false],
    ["2025-06-30", true],
  ])("ending on %s is a fiscal year: %j", (last, isFiscal) => {
    expect(isFiscalYear(fiscalYear(last))).toBe(isFiscal);
  });

  it.each(["2024-02-29", "2023-02-28", "2025-06-30", "2025-12-31"])(
    "ending on %s is followed and preceded by whole years",
    (last) => {
      const year = fiscalYear(last);
      expect(yearAfter(year).firstDay).toBe(addDays(year.lastDay, 1));
      expect(fiscalTaxYear(yearAfter(year).lastDay)).toEqual(yearAfter(year));
      const before = yearsBefore(year, 3);
      expect(before.map((one) => fiscalTaxYear(one.lastDay))).toEqual(before);
      expect([...before.slice(1), year]).toEqual(before.map(yearAfter));
    }
  );

  it("includes a tax year that ends in it, and not one that ends a day before or after", () => {
    const year = fiscalYear("2025-06-30");
    expect(includesYear(year, year)).toBe(true);
    expect(includesYear(year, calendarTaxYear(2024))).toBe(true);
    expect(includesYear(year, fiscalYear("2024-06-30"))).toBe(false);
    expect(includesYear(year, fiscalYear("2024-07-31"))).toBe(true);
    expect(includesYear(year, fiscalYear("2025-07-31"))).toBe(false);
  });
});
