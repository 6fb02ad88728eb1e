import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, calendarDate, daysBetween, weekdayOf } from "../../src/calendar/calendarDate";
import { legalHolidayOn } from "../../src/calendar/legalHoliday";
import { nextWorkday } from "../../src/calendar/nextWorkday";
import { rulebook } from "../../src/rules/rulebook";
import { daysFrom, RUNS, states } from "../calculation/arbitrary";

const holidays = rulebook.legalHolidays.rows;

describe("the next workday", () => {
  it("is the day itself when nothing hinders", () => {
    const workday = nextWorkday(calendarDate("2026-04-15"), holidays);
    expect(workday).toEqual({ day: "2026-04-15", skipped: [] });
  });

  // Rev. Rul. 2015-13: 2017 has Saturday, Sunday and the observance of Emancipation Day in a row.
  it("passes over Saturday, Sunday and a holiday in a row, and says so", () => {
    const workday = nextWorkday(calendarDate("2017-04-15"), holidays);
    expect(workday.day).toBe("2017-04-18");
    expect(workday.skipped).toEqual([
      { day: "2017-04-15", because: "Saturday" },
      { day: "2017-04-16", because: "Sunday" },
      { day: "2017-04-17", because: "Emancipation Day" },
    ]);
  });

  // Rev. Rul. 2015-13: 2016 ran to Tuesday the 19th for residents of Maine and Massachusetts.
  it("passes over a state's holiday only for that state", () => {
    const from = calendarDate("2016-04-15");
    expect(nextWorkday(from, holidays).day).toBe("2016-04-18");
    expect(nextWorkday(from, holidays, "ME").day).toBe("2016-04-19");
    expect(nextWorkday(from, holidays, "NH").day).toBe("2016-04-18");
  });

  it("crosses the end of a year", () => {
    expect(nextWorkday(calendarDate("2021-12-31"), holidays).day).toBe("2022-01-03");
  });

  it("is a workday, and every day before it is none", () => {
    fc.assert(
      fc.property(daysFrom("2009-01-01", "2028-12-20"), states, (day, state) => {
        const hindered = (candidate: typeof day): boolean =>
          weekdayOf(candidate) % 6 === 0 ||
          legalHolidayOn(candidate, holidays, state) !== undefined;
        const workday = nextWorkday(day, holidays, state);
        expect(hindered(workday.day)).toBe(false);
        expect(workday.skipped).toHaveLength(daysBetween(day, workday.day));
        for (let before = day; before < workday.day; before = addDays(before, 1))
          expect(hindered(before)).toBe(true);
      }),
      RUNS
    );
  });
});
