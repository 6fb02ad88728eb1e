import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, calendarDate, written } from "../../src/calendar/calendarDate";
import { dateFromSerial } from "../../src/calendar/dateSerial";
import { daysFrom, RUNS } from "../calculation/arbitrary";

// Serials of the 1900 date system, ECMA-376 Part 1, 18.17.4.1 (from memory): 61 is March 1, 1900.
const known: readonly (readonly [number, string])[] = [
  [61, "1900-03-01"],
  [25569, "1970-01-01"],
  [36526, "2000-01-01"],
  [45351, "2024-02-29"],
  [46127, "2026-04-15"],
  [2958465, "9999-12-31"],
];

describe("a worksheet date", () => {
  it.each(known)("%i is %s", (serial, text) => {
    expect(dateFromSerial(serial)).toBe(calendarDate(text));
    expect(calendarDate(text)).toBe(serial);
  });

  it.each([0, 1, 59, 60, 60.99, -1, 2958466, Number.NaN, Number.POSITIVE_INFINITY])(
    "refuses %d",
    (serial) => {
      expect(dateFromSerial(serial)).toBeUndefined();
    }
  );

  it("drops the time of day", () => {
    expect(dateFromSerial(46127.000001)).toBe(calendarDate("2026-04-15"));
    expect(dateFromSerial(46127.999999)).toBe(calendarDate("2026-04-15"));
  });

  it("comes back as the same date", () => {
    fc.assert(
      fc.property(daysFrom("1900-03-01", "2199-12-31"), (day) => {
        expect(dateFromSerial(day)).toBe(day);
        expect(written(dateFromSerial(day + 1) ?? day)).toBe(written(addDays(day, 1)));
      }),
      RUNS
    );
  });
});
