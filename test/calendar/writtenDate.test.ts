import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, calendarDate, daysBetween } from "../../src/calendar/calendarDate";
import { longDate, shortDate } from "../../src/calendar/writtenDate";

const anyDate = fc
  .integer({ min: 0, max: 60_000 })
  .map((days) => addDays(calendarDate("1900-03-01"), days));

describe("a written date", () => {
  // Form 4868 (2025) writes "April 15, 2026"; Excel's short date in the United States is m/d/yyyy.
  it.each([
    ["2026-04-15", "4/15/2026", "April 15, 2026"],
    ["2026-01-02", "1/2/2026", "January 2, 2026"],
    ["2024-02-29", "2/29/2024", "February 29, 2024"],
    ["2026-12-31", "12/31/2026", "December 31, 2026"],
    ["1999-10-05", "10/5/1999", "October 5, 1999"],
  ])("%s is %s, or %s", (date, short, long) => {
    expect(shortDate(calendarDate(date))).toBe(short);
    expect(longDate(calendarDate(date))).toBe(long);
  });

  // The expected texts come from the runtime's own US English date formats (Unicode CLDR).
  it("agrees with the US English formats of CLDR for any date", () => {
    const format = (style: "short" | "long") =>
      new Intl.DateTimeFormat("en-US", {
        year: "numeric",
        month: style === "short" ? "numeric" : "long",
        day: "numeric",
        timeZone: "UTC",
      });
    const [short, long] = [format("short"), format("long")];
    fc.assert(
      fc.property(anyDate, (date) => {
        const instant = daysBetween(calendarDate("1970-01-01"), date) * 86_400_000;
        expect(shortDate(date)).toBe(short.format(instant));
        expect(longDate(date)).toBe(long.format(instant));
      }),
      { numRuns: 200, seed: 4868 }
    );
  });
});
