import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { written, addDays } from "../../../src/calendar/calendarDate";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import { postponedDate } from "../../../src/calculation/dueDate/disasterPostponement";
import { FILER_TYPES } from "../../../src/calculation/filerType";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/disaster-relief.json";
import { daysFrom, RUNS } from "../arbitrary";
import { day } from "../given";

const postponement = { begins: day("2026-01-23"), ends: day("2026-06-08") };

describe("a disaster postponement as announced", () => {
  it.each(published.cases)("$case: $source.document", ({ inputs, expected }) => {
    const filerType = FILER_TYPES.find((known) => known === inputs.filerType) ?? "resident";
    const announced = {
      begins: day(inputs.begins),
      ends: day(inputs.postponementEnds),
    };
    const dates = clientDates(
      calendarTaxYear(inputs.taxYear),
      filerType,
      { postponement: announced },
      rulebook
    );
    expect({
      regular: written(dates.regular.lastDay),
      payment: written(dates.payment.lastDay),
      extended: written(dates.extended.lastDay),
    }).toEqual(expected);
  });
});

describe("a day in a postponement period", () => {
  // 26 U.S.C. 7508A(a): acts whose last day falls inside; release MS-2026-01 for the period.
  it.each([
    ["2026-01-22", "2026-01-22"],
    ["2026-01-23", "2026-06-08"],
    ["2026-04-15", "2026-06-08"],
    ["2026-06-07", "2026-06-08"],
    ["2026-06-08", "2026-06-08"],
    ["2026-06-09", "2026-06-09"],
  ])("%s becomes %s", (lastDay, moved) => {
    expect(written(postponedDate(day(lastDay), postponement))).toBe(moved);
  });

  it("never comes earlier, and moves at most once", () => {
    fc.assert(
      fc.property(
        daysFrom("2024-01-01", "2026-12-31"),
        daysFrom("2024-01-01", "2026-12-31"),
        fc.integer({ min: 0, max: 365 }),
        (lastDay, begins, length) => {
          const announced = { begins, ends: addDays(begins, length) };
          const moved = postponedDate(lastDay, announced);
          expect(moved >= lastDay).toBe(true);
          expect(postponedDate(moved, announced)).toBe(moved);
          if (moved !== lastDay) expect(moved).toBe(announced.ends);
        }
      ),
      RUNS
    );
  });
});
