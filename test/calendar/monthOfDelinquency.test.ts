import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  addDays,
  calendarDate,
  daysBetween,
  lastDayOfMonth,
  written,
} from "../../src/calendar/calendarDate";
import { monthEnd, monthsBegun } from "../../src/calendar/monthOfDelinquency";
import { daysFrom, RUNS } from "../calculation/arbitrary";
import published from "../fixtures/published/months-of-delinquency.json";

const anyDueDate = daysFrom("1970-01-01", "2030-12-31");

describe("months of delinquency", () => {
  it.each(published.monthEnds)("end as printed: $case ($source.section)", (printed) => {
    const due = calendarDate(printed.inputs.due);
    expect([1, 2, 3].map((count) => written(monthEnd(due, count)))).toEqual(printed.expected);
  });

  it.each(published.counts)("count as printed: $case ($source.document)", (printed) => {
    const { due, done } = printed.inputs;
    expect(monthsBegun(calendarDate(due), calendarDate(done))).toBe(printed.expected);
  });

  // 26 CFR 301.6651-1(b)(1): the month that ends on the day holds that day, the next begins the day after.
  it.each([
    ["2026-04-14", 0],
    ["2026-04-15", 0],
    ["2026-04-16", 1],
    ["2026-05-14", 1],
    ["2026-05-15", 1],
    ["2026-05-16", 2],
    ["2026-12-15", 8],
    ["2026-12-16", 9],
    ["2027-04-15", 12],
    ["2027-04-16", 13],
    ["2030-06-15", 50],
    ["2030-06-16", 51],
  ])("due April 15, 2026 and done %s are %i", (done, months) => {
    expect(monthsBegun(calendarDate("2026-04-15"), calendarDate(done))).toBe(months);
  });

  // The same rule around the end of February, (b)(1) and (b)(2).
  it.each([
    ["2024-01-30", "2024-02-29", 1],
    ["2024-01-30", "2024-03-01", 2],
    ["2024-01-31", "2024-02-29", 1],
    ["2024-01-31", "2024-03-01", 2],
    ["2024-02-29", "2024-03-31", 1],
    ["2024-02-29", "2024-04-01", 2],
    ["2024-02-28", "2024-03-28", 1],
    ["2024-02-28", "2024-03-29", 2],
    ["2023-02-28", "2023-03-29", 1],
  ])("due %s and done %s are %i", (due, done, months) => {
    expect(monthsBegun(calendarDate(due), calendarDate(done))).toBe(months);
  });

  it("follow one another without gap: a month's last day belongs to it, the day after to the next", () => {
    fc.assert(
      fc.property(anyDueDate, fc.integer({ min: 1, max: 60 }), (due, count) => {
        const end = monthEnd(due, count);
        expect(monthsBegun(due, end)).toBe(count);
        expect(monthsBegun(due, addDays(end, 1))).toBe(count + 1);
        expect(daysBetween(monthEnd(due, count - 1), end)).toBeGreaterThanOrEqual(28);
        expect(daysBetween(monthEnd(due, count - 1), end)).toBeLessThanOrEqual(31);
      }),
      RUNS
    );
  });

  it("run from last day to last day when the due date is one", () => {
    fc.assert(
      fc.property(anyDueDate.map(lastDayOfMonth), fc.integer({ min: 0, max: 60 }), (due, count) => {
        expect(monthEnd(due, count)).toBe(lastDayOfMonth(monthEnd(due, count)));
      }),
      RUNS
    );
  });
});
