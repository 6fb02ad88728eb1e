import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { written, daysBetween, weekdayOf, yearOf } from "../../../src/calendar/calendarDate";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { stateDueDate } from "../../../src/calculation/stateReturn/stateDueDate";
import { RUNS } from "../arbitrary";
import { day } from "../given";

const on = (taxYear: number, monthAndDay: string) =>
  stateDueDate(calendarTaxYear(taxYear), monthAndDay);

describe("a state's day", () => {
  // Weekdays of the calendar; the move off a weekend is common practice, no source for each state.
  it.each([
    ["a Wednesday stays", 2025, "04-15", "2026-04-15"],
    ["a Saturday goes to Monday", 2024, "11-15", "2025-11-17"],
    ["a Sunday goes to Monday", 2025, "11-15", "2026-11-16"],
    ["a Saturday", 2025, "10-31", "2026-11-02"],
    ["a Sunday", 2024, "04-20", "2025-04-21"],
    ["a Monday stays", 2026, "11-15", "2027-11-15"],
    ["a Saturday", 2022, "04-15", "2023-04-17"],
  ])("%s: %d, %s", (_what, taxYear, monthAndDay, expected) => {
    expect(written(on(taxYear, monthAndDay))).toBe(expected);
  });

  it("leaves holidays out, so that it is not later than the state's own", () => {
    // Monday, April 17, 2023 was Emancipation Day in the District, April 15, 2024 Patriots' Day in Massachusetts.
    expect(written(on(2022, "04-15"))).toBe("2023-04-17");
    expect(written(on(2023, "04-15"))).toBe("2024-04-15");
  });

  it("lies in the year after the tax year, on a weekday, two days on at most", () => {
    const days = fc.constantFrom("04-15", "04-20", "04-30", "05-01", "10-15", "10-31", "11-15");
    fc.assert(
      fc.property(fc.integer({ min: 2000, max: 2100 }), days, (taxYear, monthAndDay) => {
        const found = on(taxYear, monthAndDay);
        const named = day(`${String(taxYear + 1)}-${monthAndDay}`);
        expect(yearOf(found)).toBe(taxYear + 1);
        expect([1, 2, 3, 4, 5]).toContain(weekdayOf(found));
        const moved = daysBetween(named, found);
        expect(moved).toBe({ 0: 1, 6: 2 }[weekdayOf(named)] ?? 0);
      }),
      RUNS
    );
  });
});
