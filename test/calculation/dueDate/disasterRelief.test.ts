import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays } from "../../../src/calendar/calendarDate";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import { postponedByRelief } from "../../../src/calculation/dueDate/disasterRelief";
import { FILERS } from "../../../src/calculation/filer";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/disaster-relief.json";
import { daysFrom, RUNS } from "../arbitrary";
import { day } from "../given";

const relief = { begins: day("2026-01-23"), postponedTo: day("2026-06-08") };

describe("disaster relief as announced", () => {
  it.each(published.cases)("$case: $source.document", ({ inputs, expected }) => {
    const filer = FILERS.find((known) => known === inputs.filer) ?? "resident";
    const announced = { begins: day(inputs.begins), postponedTo: day(inputs.postponedTo) };
    const dates = clientDates(
      calendarTaxYear(inputs.taxYear),
      filer,
      { relief: announced },
      rulebook
    );
    expect({
      regular: dates.regular.lastDay,
      payment: dates.payment.lastDay,
      extended: dates.extended.lastDay,
    }).toEqual(expected);
  });
});

describe("a day in a relief period", () => {
  // 26 U.S.C. 7508A(a): acts whose last day falls inside; release MS-2026-01 for the period.
  it.each([
    ["2026-01-22", "2026-01-22"],
    ["2026-01-23", "2026-06-08"],
    ["2026-04-15", "2026-06-08"],
    ["2026-06-07", "2026-06-08"],
    ["2026-06-08", "2026-06-08"],
    ["2026-06-09", "2026-06-09"],
  ])("%s becomes %s", (lastDay, moved) => {
    expect(postponedByRelief(day(lastDay), relief)).toBe(moved);
  });

  it("never comes earlier, and moves at most once", () => {
    fc.assert(
      fc.property(
        daysFrom("2024-01-01", "2026-12-31"),
        daysFrom("2024-01-01", "2026-12-31"),
        fc.integer({ min: 0, max: 365 }),
        (lastDay, begins, length) => {
          const announced = { begins, postponedTo: addDays(begins, length) };
          const moved = postponedByRelief(lastDay, announced);
          expect(moved >= lastDay).toBe(true);
          expect(postponedByRelief(moved, announced)).toBe(moved);
          if (moved !== lastDay) expect(moved).toBe(announced.postponedTo);
        }
      ),
      RUNS
    );
  });
});
