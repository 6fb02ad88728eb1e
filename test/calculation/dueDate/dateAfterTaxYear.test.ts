import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { written, lastDayOfMonth, yearOf } from "../../../src/calendar/calendarDate";
import { dateAfterTaxYear } from "../../../src/calculation/dueDate/dateAfterTaxYear";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { daysFrom, RUNS } from "../arbitrary";
import { fiscalYear } from "../given";

describe("the n-th day of the m-th month after a tax year", () => {
  // 26 U.S.C. 6072(a), (c): April 15 and June 15 after a calendar year.
  it.each([
    [4, 15, "2026-04-15"],
    [6, 15, "2026-06-15"],
    [1, 15, "2026-01-15"],
    [13, 1, "2027-01-01"],
    [0, 15, "2025-12-15"],
    [-8, 15, "2025-04-15"],
  ])("month %i, day %i after 2025 is %s", (month, dayOfMonth, found) => {
    expect(written(dateAfterTaxYear(calendarTaxYear(2025), month, dayOfMonth))).toBe(found);
  });

  // 26 U.S.C. 6072(a): the 15th day of the fourth month following the close of the fiscal year.
  it.each([
    ["2025-06-30", "2025-10-15"],
    ["2024-02-29", "2024-06-15"],
    ["2025-01-31", "2025-05-15"],
    ["2025-11-30", "2026-03-15"],
  ])("the fourth month after a year that ends %s brings %s", (lastDay, found) => {
    expect(written(dateAfterTaxYear(fiscalYear(lastDay), 4, 15))).toBe(found);
  });

  it("always has the day number asked for", () => {
    fc.assert(
      fc.property(
        daysFrom("2009-12-31", "2027-12-31").map(lastDayOfMonth),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 28 }),
        (lastDay, month, dayOfMonth) => {
          const found = dateAfterTaxYear(fiscalYear(written(lastDay)), month, dayOfMonth);
          expect(Number(written(found).slice(8))).toBe(dayOfMonth);
          expect(found > lastDay).toBe(true);
          expect(yearOf(found) - yearOf(lastDay)).toBeLessThanOrEqual(1);
        }
      ),
      RUNS
    );
  });
});
