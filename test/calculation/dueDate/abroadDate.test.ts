import { describe, expect, it } from "vitest";
import { abroadDate } from "../../../src/calculation/dueDate/abroadDate";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { written } from "../../../src/calendar/calendarDate";
import { day } from "../given";

describe("the date for Form 2350, line 1", () => {
  // Form 2350 (2010), page 4, line 1, rule printed, dates computed: F2350-BFR and F2350-PPT.
  it.each([
    ["bona fide residence", "2011-01-01", "2012-01-31"],
    ["bona fide residence", "2026-01-01", "2027-01-31"],
    ["physical presence", "2025-06-11", "2026-07-11"],
  ] as const)("by %s from %s is %s", (test, from, date) => {
    expect(written(abroadDate(day(from), test, rulebook))).toBe(date);
  });

  // The same rule: residence counts from the next full tax year.
  it.each(["2025-01-02", "2025-06-11", "2025-12-31", "2026-01-01"])(
    "by residence is the same for every first day of the year before: %s",
    (from) => {
      expect(written(abroadDate(day(from), "bona fide residence", rulebook))).toBe("2027-01-31");
    }
  );

  // Twelve months from February 29 end on February 28; 30 days later is March 30.
  it("counts months by the calendar", () => {
    expect(written(abroadDate(day("2024-02-29"), "physical presence", rulebook))).toBe(
      "2025-03-30"
    );
  });

  // invented dates at both ends of the table
  it.each([
    ["2009-01-01", "2010-01-31"],
    ["2027-12-31", "2029-01-30"],
  ])("is covered from %s", (from, date) => {
    expect(written(abroadDate(day(from), "physical presence", rulebook))).toBe(date);
  });

  it.each([
    ["physical presence", "2008-12-31"],
    ["physical presence", "2028-01-01"],
    ["bona fide residence", "2027-01-02"],
  ] as const)("is not covered by %s from %s", (test, from) => {
    expect(() => abroadDate(day(from), test, rulebook)).toThrow(NotInTableError);
  });
});
