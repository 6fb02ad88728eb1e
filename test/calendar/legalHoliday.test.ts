import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { written, addDays, calendarDate, weekdayOf, yearOf } from "../../src/calendar/calendarDate";
import { legalHolidayOn } from "../../src/calendar/legalHoliday";
import { rulebook } from "../../src/rules/rulebook";
import { daysFrom, RUNS } from "../calculation/arbitrary";
import published from "../fixtures/published/legal-holidays.json";

const rules = rulebook.legalHolidays.rows;

function holidaysOf(year: number): readonly string[] {
  const found: string[] = [];
  let day = calendarDate(`${String(year)}-01-01`);
  for (; yearOf(day) === year; day = addDays(day, 1))
    if (legalHolidayOn(day, rules)) found.push(written(day));
  return found;
}

describe("the legal holidays of a year", () => {
  it.each(published.years)("are those listed for $case ($source.document)", (listed) => {
    expect(holidaysOf(listed.inputs.year)).toEqual(listed.expected);
  });
});

// 5 U.S.C. 6103(a) to (c) and D.C. Code 28-2701, of the first year held: July 4, 2009 was a Saturday.
describe("the holidays by their names", () => {
  it.each([
    ["New Year's Day", "2009-01-01"],
    ["Martin Luther King Jr. Day", "2009-01-19"],
    ["Inauguration Day", "2009-01-20"],
    ["Washington's Birthday", "2009-02-16"],
    ["Emancipation Day", "2009-04-16"],
    ["Memorial Day", "2009-05-25"],
    ["Independence Day", "2009-07-03"],
    ["Labor Day", "2009-09-07"],
    ["Columbus Day", "2009-10-12"],
    ["Veterans Day", "2009-11-11"],
    ["Thanksgiving Day", "2009-11-26"],
    ["Christmas Day", "2009-12-25"],
  ])("include %s, in 2009 observed on %s", (name, day) => {
    expect(legalHolidayOn(calendarDate(day), rules)).toBe(name);
  });

  it("that the law sets on a weekday of a month are the six it names so, and Patriots' Day", () => {
    const setOnWeekdays = rules.filter(({ observed }) => observed === "never on a weekend");
    expect(setOnWeekdays.map(({ name }) => name)).toEqual([
      "Martin Luther King Jr. Day",
      "Washington's Birthday",
      "Patriots' Day",
      "Memorial Day",
      "Labor Day",
      "Columbus Day",
      "Thanksgiving Day",
    ]);
  });
});

describe("a legal holiday", () => {
  // Rev. Rul. 2015-13: Emancipation Day on a Saturday is observed on Friday, on a Sunday on Monday.
  it.each([
    ["2011-04-15", "2011-04-16"],
    ["2016-04-15", "2016-04-16"],
    ["2017-04-17", "2017-04-16"],
    ["2023-04-17", "2023-04-16"],
  ])("Emancipation Day is observed on %s for %s", (kept, named) => {
    expect(legalHolidayOn(calendarDate(kept), rules)).toBe("Emancipation Day");
    expect(legalHolidayOn(calendarDate(named), rules)).toBeUndefined();
  });

  // Rev. Rul. 2015-13; no day was given in 2011 to 2013, news of those seasons.
  it("Patriots' Day counts for Maine and Massachusetts from 2016 on, elsewhere never", () => {
    const third = calendarDate("2019-04-15");
    expect(legalHolidayOn(third, rules, "ME")).toBe("Patriots' Day");
    expect(legalHolidayOn(third, rules, "MA")).toBe("Patriots' Day");
    expect(legalHolidayOn(third, rules, "WI")).toBeUndefined();
    expect(legalHolidayOn(third, rules)).toBeUndefined();
    expect(legalHolidayOn(calendarDate("2013-04-15"), rules, "MA")).toBeUndefined();
    expect(legalHolidayOn(calendarDate("2015-04-20"), rules, "MA")).toBeUndefined();
  });

  // Pub. L. 117-17 of June 17, 2021.
  it("Juneteenth begins with 2021, that year observed on Friday the 18th", () => {
    expect(legalHolidayOn(calendarDate("2020-06-19"), rules)).toBeUndefined();
    expect(legalHolidayOn(calendarDate("2021-06-18"), rules)).toBe("Juneteenth");
  });

  // 5 U.S.C. 6103(c): January 20 of every fourth year, Monday when it is a Sunday.
  it("Inauguration Day is observed every fourth year, on Monday the 21st in 2013", () => {
    expect(legalHolidayOn(calendarDate("2009-01-20"), rules)).toBe("Inauguration Day");
    const alone = rules.filter(({ name }) => name === "Inauguration Day");
    expect(legalHolidayOn(calendarDate("2013-01-21"), alone)).toBe("Inauguration Day");
    expect(legalHolidayOn(calendarDate("2013-01-20"), alone)).toBeUndefined();
    expect(legalHolidayOn(calendarDate("2017-01-20"), rules)).toBe("Inauguration Day");
    expect(legalHolidayOn(calendarDate("2021-01-20"), rules)).toBe("Inauguration Day");
    expect(legalHolidayOn(calendarDate("2022-01-20"), rules)).toBeUndefined();
    // a Saturday, for which the section moves nothing
    expect(legalHolidayOn(calendarDate("2029-01-19"), alone)).toBeUndefined();
  });

  it("New Year's Day of a year that begins on a Saturday is observed the year before", () => {
    expect(legalHolidayOn(calendarDate("2021-12-31"), rules)).toBe("New Year's Day");
    expect(legalHolidayOn(calendarDate("2022-01-01"), rules)).toBeUndefined();
  });

  it("never falls on a weekend", () => {
    fc.assert(
      fc.property(daysFrom("2009-01-01", "2028-12-31"), (day) => {
        fc.pre(weekdayOf(day) % 6 === 0);
        expect(legalHolidayOn(day, rules, "ME")).toBeUndefined();
      }),
      RUNS
    );
  });

  it("of the District is one for residents of every state", () => {
    for (const day of holidaysOf(2026)) {
      expect(legalHolidayOn(calendarDate(day), rules, "ME")).toBeDefined();
      expect(legalHolidayOn(calendarDate(day), rules, "CA")).toBeDefined();
    }
  });
});
