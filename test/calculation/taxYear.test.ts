import { describe, expect, it } from "vitest";
import { addDays } from "../../src/calendar/calendarDate";
import {
  calendarTaxYear,
  fiscalTaxYear,
  includesYear,
  yearAfter,
  yearsBefore,
} from "../../src/calculation/taxYear";
import { day, fiscalYear } from "./given";

describe("a tax year", () => {
  it("of the calendar runs from January 1 to December 31", () => {
    expect(calendarTaxYear(2025)).toEqual({ firstDay: "2025-01-01", lastDay: "2025-12-31" });
  });

  // 26 U.S.C. 441(e): a fiscal year is twelve months ending on the last day of a month.
  it.each([
    ["2025-06-30", "2024-07-01"],
    ["2024-02-29", "2023-03-01"],
    ["2025-02-28", "2024-03-01"],
    ["2025-12-31", "2025-01-01"],
  ])("may end on %s, having begun on %s", (last, first) => {
    expect(fiscalTaxYear(day(last))).toEqual({ firstDay: first, lastDay: last });
  });

  it.each(["2025-06-29", "2024-02-28", "2025-12-30", "2025-07-01"])("cannot end on %s", (last) => {
    expect(fiscalTaxYear(day(last))).toBeUndefined();
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
