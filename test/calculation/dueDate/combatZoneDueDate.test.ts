import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, daysBetween } from "../../../src/calendar/calendarDate";
import { combatZoneDueDate } from "../../../src/calculation/dueDate/combatZoneDueDate";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { InputError } from "../../../src/inputError";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/combat-zone.json";
import { daysFrom, RUNS } from "../arbitrary";
import { day } from "../given";

const lastDay = (year: number, entered: string, left: string): string =>
  combatZoneDueDate(calendarTaxYear(year), day(entered), day(left), rulebook);

describe("the last day after service in a combat zone", () => {
  it.each(published.cases)("$case ($source.document)", ({ inputs, expected }) => {
    const found = lastDay(inputs.taxYear, inputs.entered, inputs.left);
    expect(expected.daysInAll).toBe(180 + expected.daysLeft);
    expect(daysBetween(day(inputs.left), day(found))).toBe(expected.daysInAll);
  });

  it("does not move for weekends: the earlier day is the safe one", () => {
    expect(lastDay(2025, "2026-03-01", "2026-10-03")).toBe("2027-05-17");
    expect(lastDay(2025, "2026-03-01", "2026-10-01")).toBe("2027-05-15");
  });

  it("is never before the regular due date", () => {
    expect(lastDay(2025, "2024-01-10", "2024-02-10")).toBe("2026-04-15");
  });

  it("refuses to leave before entering", () => {
    expect(() => lastDay(2025, "2026-03-02", "2026-03-01")).toThrow(
      new InputError("left", "2026-03-01 is before the day of entering, 2026-03-02")
    );
    expect(() => lastDay(2025, "2026-03-02", "2026-03-02")).not.toThrow();
  });

  it("takes the last timely day as day of entering and refuses the next", () => {
    expect(() => lastDay(2025, "2026-04-15", "2026-09-30")).not.toThrow();
    expect(() => lastDay(2025, "2026-04-16", "2026-09-30")).toThrow(
      /^entered: 2026-04-16 is after the return was due, 2026-04-15; no day of the filing season/
    );
    expect(() => lastDay(2022, "2023-04-18", "2023-09-30")).not.toThrow();
    expect(() => lastDay(2022, "2023-04-19", "2023-09-30")).toThrow(InputError);
  });

  // Executive Order 12744: the Arabian Peninsula is a combat zone from January 17, 1991 on (the day from memory).
  it("refuses service that ended before the first combat zone it knows", () => {
    expect(lastDay(2025, "1991-01-17", "1991-01-17")).toBe("2026-04-15");
    expect(() => lastDay(2025, "1991-01-16", "1991-01-16")).toThrow(NotInTableError);
  });

  it("refuses a tax year whose dates are not held", () => {
    expect(() => lastDay(2028, "2029-01-10", "2029-02-10")).toThrow(NotInTableError);
  });

  it("gives 180 days and at most the whole season, each day of later entry costing one", () => {
    fc.assert(
      fc.property(
        daysFrom("2025-11-01", "2026-04-14"),
        fc.integer({ min: 200, max: 900 }),
        (entered, service) => {
          const left = addDays(entered, service);
          const days = daysBetween(left, day(lastDay(2025, entered, left)));
          const nextDay = daysBetween(left, day(lastDay(2025, addDays(entered, 1), left)));
          expect(days).toBeGreaterThanOrEqual(180);
          expect(days).toBeLessThanOrEqual(285);
          expect(days - nextDay).toBe(entered >= "2026-01-01" ? 1 : 0);
        }
      ),
      RUNS
    );
  });
});
