import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  addDays,
  addMonths,
  calendarDate,
  compareDates,
  daysBetween,
  dayOfMonthOf,
  daysInYear,
  earlierDate,
  lastDayOfMonth,
  laterDate,
  monthOf,
  parseCalendarDate,
  weekdayOf,
  written,
  yearOf,
  type CalendarDate,
} from "../../src/calendar/calendarDate";
import { daysFrom, RUNS } from "../calculation/arbitrary";
import { civil, daysInMonth, weekday, written as civilText } from "../secondOpinion/civilDays";
import dayCounts from "../fixtures/published/day-counts.json";

const anyDay = daysFrom("1900-03-01", "2199-12-31");

describe("reading a day", () => {
  it.each(["2026-04-15", "2024-02-29", "2000-02-29", "1970-01-01", "9999-12-31"])(
    "takes %s",
    (text) => {
      expect(parseCalendarDate(text)).toBe(calendarDate(text));
      expect(written(calendarDate(text))).toBe(text);
    }
  );

  it.each([
    "2026-02-29",
    "1900-02-29",
    "2026-04-31",
    "2026-13-01",
    "2026-00-10",
    "2026-4-15",
    "04/15/2026",
    "2026-04-15T00:00",
    " 2026-04-15",
    "",
  ])("refuses %j", (text) => {
    expect(parseCalendarDate(text)).toBeUndefined();
    expect(() => calendarDate(text)).toThrow(RangeError);
  });

  it("gives the year, the month and the day of the month", () => {
    const date = calendarDate("2026-04-15");
    expect([yearOf(date), monthOf(date), dayOfMonthOf(date)]).toEqual([2026, 4, 15]);
  });

  it("is the inverse of writing, and agrees with an independent calendar, for every worksheet date", () => {
    // The independent calendar counts from January 1, 1970, which is worksheet date 25569.
    const wrong = [];
    for (let serial = 61; serial <= 109_574; serial++) {
      const date = serial as CalendarDate;
      const { year, month, date: dayOfMonth } = civil(serial - 25_569);
      const last = daysInMonth(year, month);
      const isSame =
        written(date) === civilText(serial - 25_569) &&
        parseCalendarDate(written(date)) === date &&
        yearOf(date) === year &&
        monthOf(date) === month &&
        dayOfMonthOf(date) === dayOfMonth &&
        weekdayOf(date) === weekday(serial - 25_569) &&
        lastDayOfMonth(date) === addDays(date, last - dayOfMonth);
      if (!isSame) wrong.push(serial);
    }
    expect(wrong).toEqual([]);
    expect(written(109_574 as CalendarDate)).toBe("2199-12-31");
  });
});

describe("days between", () => {
  it.each(dayCounts.cases)("$case ($source.document)", ({ inputs, expected }) => {
    expect(daysBetween(calendarDate(inputs.from), calendarDate(inputs.to))).toBe(expected);
  });

  it("undo adding days, also over changes of daylight saving time", () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -4000, max: 4000 }), (from, days) => {
        expect(daysBetween(from, addDays(from, days))).toBe(days);
      }),
      RUNS
    );
  });

  it("order as the text of the days does", () => {
    fc.assert(
      fc.property(anyDay, anyDay, (one, other) => {
        const [earlier, later] = [written(one), written(other)];
        expect(Math.sign(daysBetween(one, other))).toBe(
          earlier < later ? 1 : earlier > later ? -1 : 0
        );
      }),
      RUNS
    );
  });
});

describe("two days", () => {
  it("are compared as the calendar has them, whichever is given first", () => {
    const [eve, day] = [calendarDate("2025-12-31"), calendarDate("2026-01-01")];
    expect([earlierDate(eve, day), earlierDate(day, eve)]).toEqual([eve, eve]);
    expect([laterDate(eve, day), laterDate(day, eve)]).toEqual([day, day]);
    expect([compareDates(eve, day), compareDates(day, eve), compareDates(day, day)]).toEqual([
      -1, 1, 0,
    ]);
  });
});

describe("adding months", () => {
  it.each([
    ["2026-04-15", 6, "2026-10-15"],
    ["2026-01-31", 1, "2026-02-28"],
    ["2024-01-31", 1, "2024-02-29"],
    ["2026-01-31", 2, "2026-03-31"],
    ["2026-08-31", -2, "2026-06-30"],
    ["2026-11-15", 2, "2027-01-15"],
    ["2024-02-29", 12, "2025-02-28"],
  ])("%s and %i is %s", (from, months, to) => {
    expect(written(addMonths(calendarDate(from), months))).toBe(to);
  });

  it("keeps the day number or falls on the last day of a shorter month", () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 0, max: 120 }), (from, months) => {
        const to = addMonths(from, months);
        const sameNumber = dayOfMonthOf(to) === dayOfMonthOf(from);
        expect(sameNumber || to === lastDayOfMonth(to)).toBe(true);
        expect((yearOf(to) - yearOf(from)) * 12 + monthOf(to) - monthOf(from)).toBe(months);
      }),
      RUNS
    );
  });
});

describe("the calendar", () => {
  // Weekdays as the notices and the due-date lists give them.
  it.each([
    ["2017-04-15", 6],
    ["2012-04-15", 0],
    ["2026-04-15", 3],
    ["1990-04-15", 0],
    ["2020-07-15", 3],
  ])("knows the weekday of %s", (text, weekday) => {
    expect(weekdayOf(calendarDate(text))).toBe(weekday);
  });

  it("comes round to the same weekday after seven days and to another before", () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 1, max: 6 }), (from, days) => {
        expect(weekdayOf(addDays(from, 7))).toBe(weekdayOf(from));
        expect(weekdayOf(addDays(from, days))).toBe((weekdayOf(from) + days) % 7);
      }),
      RUNS
    );
  });

  it.each([
    [2023, 365],
    [2024, 366],
    [1900, 365],
    [2000, 366],
    [2100, 365],
  ])("gives %i its %i days", (year, days) => {
    expect(daysInYear(year)).toBe(days);
    expect(
      daysBetween(calendarDate(`${String(year)}-01-01`), calendarDate(`${String(year + 1)}-01-01`))
    ).toBe(days);
  });

  it.each([
    ["2026-02-01", "2026-02-28"],
    ["2024-02-29", "2024-02-29"],
    ["2026-12-31", "2026-12-31"],
    ["2026-04-15", "2026-04-30"],
  ])("the month of %s ends %s", (from, last) => {
    expect(written(lastDayOfMonth(calendarDate(from)))).toBe(last);
  });
});
