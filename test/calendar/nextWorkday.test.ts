import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  written,
  addDays,
  calendarDate,
  daysBetween,
  weekdayOf,
} from "../../src/calendar/calendarDate";
import { legalHolidayOn } from "../../src/calendar/legalHoliday";
import { nextWorkday } from "../../src/calendar/nextWorkday";
import { rulebook } from "../../src/rules/rulebook";
import { daysFrom, RUNS, states } from "../calculation/arbitrary";

const holidays = rulebook.legalHolidays.rows;

describe("the next workday", () => {
  it("is the date itself if that is a workday", () => {
    const workday = nextWorkday(calendarDate("2026-04-15"), holidays);
    expect(workday).toEqual({ date: calendarDate("2026-04-15"), skipped: [] });
  });

  // Rev. Rul. 2015-13: 2017 has Saturday, Sunday and the observance of Emancipation Day in a row.
  it("skips a Saturday, a Sunday and a holiday, and says so", () => {
    const workday = nextWorkday(calendarDate("2017-04-15"), holidays);
    expect(written(workday.date)).toBe("2017-04-18");
    expect(workday.skipped).toEqual([
      { date: calendarDate("2017-04-15"), because: "Saturday" },
      { date: calendarDate("2017-04-16"), because: "Sunday" },
      { date: calendarDate("2017-04-17"), because: "Emancipation Day" },
    ]);
  });

  // Rev. Rul. 2015-13: the due date of 2016 was Tuesday, April 19, for residents of Maine and Massachusetts.
  it("skips a state's holiday only for that state", () => {
    const from = calendarDate("2016-04-15");
    expect(written(nextWorkday(from, holidays).date)).toBe("2016-04-18");
    expect(written(nextWorkday(from, holidays, "ME").date)).toBe("2016-04-19");
    expect(written(nextWorkday(from, holidays, "NH").date)).toBe("2016-04-18");
  });

  it("crosses the end of a year", () => {
    expect(written(nextWorkday(calendarDate("2021-12-31"), holidays).date)).toBe("2022-01-03");
  });

  it("is a workday, and no date before it is one", () => {
    fc.assert(
      fc.property(daysFrom("2009-01-01", "2028-12-20"), states, (from, state) => {
        const isNoWorkday = (candidate: typeof from): boolean =>
          weekdayOf(candidate) % 6 === 0 ||
          legalHolidayOn(candidate, holidays, state) !== undefined;
        const workday = nextWorkday(from, holidays, state);
        expect(isNoWorkday(workday.date)).toBe(false);
        expect(workday.skipped).toHaveLength(daysBetween(from, workday.date));
        for (let before = from; before < workday.date; before = addDays(before, 1))
          expect(isNoWorkday(before)).toBe(true);
      }),
      RUNS
    );
  });
});
