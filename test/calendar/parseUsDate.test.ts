import { format, isValid, parse, parseISO } from "date-fns";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseUsDate } from "../../src/calendar/parseUsDate";
import { calendarDate, written } from "../../src/calendar/calendarDate";
import { daysFrom, RUNS } from "../calculation/arbitrary";

describe("a date as Americans write it", () => {
  it.each([
    ["4/15/2026", "2026-04-15"],
    ["04/15/2026", "2026-04-15"],
    ["04/15/26", "2026-04-15"],
    ["4-15-2026", "2026-04-15"],
    ["4-15-26", "2026-04-15"],
    ["April 15, 2026", "2026-04-15"],
    ["april 15 2026", "2026-04-15"],
    ["Apr 15, 2026", "2026-04-15"],
    ["APR 15, 2026", "2026-04-15"],
    ["Apr. 15 2026", "2026-04-15"],
    ["Sept 15, 2026", "2026-09-15"],
    ["Sept. 15, 2026", "2026-09-15"],
    ["Sep 15, 2026", "2026-09-15"],
    ["May 1, 2026", "2026-05-01"],
    ["2026-04-15", "2026-04-15"],
    [" 4/15/2026 ", "2026-04-15"],
    ["2/29/2024", "2024-02-29"],
  ])("%j is %s", (text, date) => {
    expect(parseUsDate(text)).toBe(calendarDate(date));
  });

  // Microsoft, "Change the date system, format, or two-digit year interpretation": 00 to 49 are 2000 to 2049, 50 to 99 are 1950 to 1999,
  // as current versions of Excel set it by default.
  it.each([
    ["1/1/00", "2000-01-01"],
    ["1/1/49", "2049-01-01"],
    ["1/1/50", "1950-01-01"],
    ["12/31/99", "1999-12-31"],
  ])("with two digits of a year: %s is %s", (text, date) => {
    expect(parseUsDate(text)).toBe(calendarDate(date));
  });

  it.each([
    "15/4/2026",
    "13/1/2026",
    "0/15/2026",
    "4/0/2026",
    "4/31/2026",
    "2/30/2026",
    "2/29/2025",
    "2/29/2100",
    "Smarch 1 2026",
    "Feb 30, 2026",
    "Ap 15, 2026",
    "Apri 15, 2026",
    "Septe 1, 2026",
    "4/15",
    "April 15",
    "April 2026",
    "15 April 2026",
    "April 15, 26",
    "4/15/026",
    "4/15/20266",
    "4.15.2026",
    "2026/04/15",
    "2026-4-15",
    "4/15/2026 10:00",
    "4//15/2026",
    "-4/15/2026",
    "",
    "١/١/٢٠٢٦",
    "Mai 1, 2026",
  ])("%j has no such reading", (text) => {
    expect(parseUsDate(text)).toBeUndefined();
  });
});

/** Every date that a worksheet has. */
const anyDate = daysFrom("1900-03-01", "2199-12-31");

describe("every date", () => {
  // date-fns and, for American English, the CLDR in Intl write the dates here.
  it.each(["M/d/yyyy", "MM/dd/yyyy", "M-d-yyyy", "MMMM d, yyyy", "MMM d, yyyy", "MMM. d yyyy"])(
    "is read as date-fns writes it: %s",
    (pattern) => {
      fc.assert(
        fc.property(anyDate, (date) => {
          expect(parseUsDate(format(parseISO(written(date)), pattern))).toBe(date);
        }),
        RUNS
      );
    }
  );

  it.each(["medium", "long"] as const)("is read as Intl writes it: %s", (dateStyle) => {
    const intl = new Intl.DateTimeFormat("en-US", { dateStyle });
    fc.assert(
      fc.property(anyDate, (date) => {
        expect(parseUsDate(intl.format(parseISO(written(date))))).toBe(date);
      }),
      RUNS
    );
  });

  it("from 1950 through 2049 is read as Intl writes it with two digits of the year", () => {
    const intl = new Intl.DateTimeFormat("en-US", { dateStyle: "short" });
    fc.assert(
      fc.property(daysFrom("1950-01-01", "2049-12-31"), (date) => {
        expect(parseUsDate(intl.format(parseISO(written(date))))).toBe(date);
      }),
      RUNS
    );
  });
});

describe("three numbers", () => {
  it("are read where month and day exist, month first, and in no other order", () => {
    const number = fc.nat({ max: 40 });
    fc.assert(
      fc.property(number, number, fc.integer({ min: 1000, max: 9999 }), (month, day, year) => {
        const text = `${String(month)}/${String(day)}/${String(year)}`;
        const date = parse(text, "M/d/yyyy", 0);
        expect(parseUsDate(text)).toBe(
          isValid(date) ? calendarDate(format(date, "yyyy-MM-dd")) : undefined
        );
      }),
      { ...RUNS, numRuns: 1000 }
    );
  });
});
