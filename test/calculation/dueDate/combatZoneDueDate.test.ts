import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { written, addDays, daysBetween } from "../../../src/calendar/calendarDate";
import { combatZoneDueDate } from "../../../src/calculation/dueDate/combatZoneDueDate";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/combat-zone.json";
import { daysFrom, RUNS } from "../arbitrary";
import { day } from "../given";

const lastDay = (year: number, entered: string, left: string): string =>
  written(combatZoneDueDate(calendarTaxYear(year), day(entered), day(left), rulebook));

describe("the last day after service in a combat zone", () => {
  it.each(published.cases)("$case ($source.document)", ({ inputs, expected }) => {
    const found = lastDay(inputs.taxYear, inputs.entered, inputs.left);
    expect(expected.daysInAll).toBe(180 + expected.daysLeft);
    expect(daysBetween(day(inputs.left), day(found))).toBe(expected.daysInAll);
  });

  it("does not move for weekends, because the earlier date is safe", () => {
    expect(lastDay(2025, "2026-03-01", "2026-10-03")).toBe("2027-05-17");
    expect(lastDay(2025, "2026-03-01", "2026-10-01")).toBe("2027-05-15");
  });

  it("is never before the regular due date", () => {
    expect(lastDay(2025, "2024-01-10", "2024-02-10")).toBe("2026-04-15");
  });

  // 26 U.S.C. 7508(a): the date of entry and the last date of service count, also if they are one date or the due date itself.
  it("counts one day of service, and service that begins on the due date", () => {
    expect(lastDay(2025, "2026-03-02", "2026-03-02")).toBe("2026-10-13");
    expect(lastDay(2025, "2026-04-15", "2026-09-30")).toBe("2027-03-30");
  });

  // Executive Order 12744: the Arabian Peninsula is a combat zone from January 17, 1991 on (date from memory).
  it("does not cover service that ended before the first combat zone in the table", () => {
    expect(lastDay(2025, "1991-01-17", "1991-01-17")).toBe("2026-04-15");
    expect(() => lastDay(2025, "1991-01-16", "1991-01-16")).toThrow(NotInTableError);
  });

  it("does not cover a tax year without due dates", () => {
    expect(() => lastDay(2028, "2029-01-10", "2029-02-10")).toThrow(NotInTableError);
  });

  it("gives 180 days plus at most the whole season, one day less for each day of later entry", () => {
    fc.assert(
      fc.property(
        daysFrom("2025-11-01", "2026-04-14"),
        fc.integer({ min: 200, max: 900 }),
        (entered, service) => {
          const left = addDays(entered, service);
          const days = daysBetween(left, day(lastDay(2025, written(entered), written(left))));
          const nextDay = daysBetween(
            left,
            day(lastDay(2025, written(addDays(entered, 1)), written(left)))
          );
          expect(days).toBeGreaterThanOrEqual(180);
          expect(days).toBeLessThanOrEqual(285);
          expect(days - nextDay).toBe(entered >= day("2026-01-01") ? 1 : 0);
        }
      ),
      RUNS
    );
  });
});
