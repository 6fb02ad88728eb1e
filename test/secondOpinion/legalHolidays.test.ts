/**
 * Compares the federal holidays with two third-party packages: "@18f/us-federal-holidays", written by a group of the General Services
 * Administration from the list of the Office of Personnel Management, and "date-holidays", maintained by volunteers for many countries.
 * Both have the holidays of the Federal Government. Section 7503 uses those of the District of Columbia, which has one more.
 */
import { allForYear } from "@18f/us-federal-holidays";
import Holidays from "date-holidays";
import { describe, expect, it } from "vitest";
import { legalHolidayOn } from "../../src/calendar/legalHoliday";
import { rulebook } from "../../src/rules/rulebook";
import { day } from "../calculation/given";
import { dayNumber, weekday, written } from "./civilDays";

const rules = rulebook.legalHolidays.rows;
const YEARS = Array.from({ length: 19 }, (_, index) => 2010 + index);
const WEEKDAYS = new Set<string>();
for (let number = dayNumber(2010, 1, 1); number <= dayNumber(2028, 12, 31); number++)
  if (weekday(number) % 6 !== 0) WEEKDAYS.add(written(number));

/** Weekdays of 2010 to 2028 from a package. The next year is included because its New Year's Day may be observed in December. */
const among = (named: readonly string[]): readonly string[] =>
  [...new Set(named)].filter((text) => WEEKDAYS.has(text)).sort();

const years = [...YEARS, 2029];
const ofPersonnelManagement = among(
  years.flatMap((year) => allForYear(year).map((holiday) => holiday.dateString))
);
/** An observed date is "public" in this package, but "bank" for Veterans Day. */
const dateHolidays = new Holidays("US");
const ofVolunteers = among(
  years.flatMap((year) =>
    dateHolidays
      .getHolidays(year)
      .filter((kept) => kept.type === "public" || (kept.type === "bank" && kept.substitute))
      .map((kept) => kept.date.slice(0, 10))
  )
);
const nameOn = (text: string): string | undefined => legalHolidayOn(day(text), rules);
const ours = [...WEEKDAYS].filter((text) => nameOn(text) !== undefined);

/** 5 U.S.C. 6103(c): observed in and around the District, and in neither package. In 2013 and 2025 it fell on Martin Luther King Jr. Day. */
const INAUGURATIONS = ["2017-01-20", "2021-01-20"];

describe("the federal holidays of 2010 to 2028", () => {
  it("are the same in both packages", () => {
    expect(ofPersonnelManagement).toHaveLength(198);
    expect(ofVolunteers).toEqual(ofPersonnelManagement);
  });

  it("are all legal holidays here", () => {
    expect(ofPersonnelManagement.filter((text) => !ours.includes(text))).toEqual([]);
  });

  it("are all of ours except Emancipation Day and Inauguration Day of the District", () => {
    const more = ours.filter((text) => !ofPersonnelManagement.includes(text));
    const emancipation = more.filter((text) => nameOn(text) === "Emancipation Day");
    expect(emancipation).toHaveLength(19);
    expect(emancipation.map((text) => text.slice(0, 4))).toEqual(YEARS.map(String));
    expect(more.filter((text) => nameOn(text) === "Inauguration Day")).toEqual(INAUGURATIONS);
    expect(more).toHaveLength(19 + INAUGURATIONS.length);
  });

  it("include Juneteenth from 2021, under Pub. L. 117-17", () => {
    const june = (kept: readonly string[]): readonly string[] =>
      kept.filter((text) => text.slice(5, 7) === "06");
    expect(june(ours)).toEqual(june(ofPersonnelManagement));
    expect(june(ours)[0]).toBe("2021-06-18");
    expect(june(ours)).toHaveLength(8);
  });
});

describe("the holidays of a state", () => {
  // Rev. Rul. 2015-13 counts Patriots' Day from 2016. The package has it for both states in every year.
  it.each(["MA", "ME"])("include Patriots' Day of %s from 2016, as in the package", (code) => {
    const ofState = new Holidays("US", code);
    for (const year of YEARS) {
      const kept = ofState.getHolidays(year).find((found) => found.name.startsWith("Patriots"));
      const text = kept?.date.slice(0, 10) ?? "";
      expect(text.slice(0, 7)).toBe(`${String(year)}-04`);
      const counted = legalHolidayOn(day(text), rules, code);
      if (year >= 2016) expect(counted).toBeDefined();
      else expect(counted).not.toBe("Patriots' Day");
    }
  });

  // date-holidays has April 16 itself for the District, not the observed date, which is in the ruling.
  it("include Emancipation Day as in the package when it falls on a weekday", () => {
    const ofDistrict = new Holidays("US", "DC");
    for (const year of YEARS) {
      const kept = ofDistrict.getHolidays(year).find((found) => found.name === "Emancipation Day");
      const text = kept?.date.slice(0, 10) ?? "";
      expect(text).toBe(`${String(year)}-04-16`);
      expect(nameOn(text)).toBe(WEEKDAYS.has(text) ? "Emancipation Day" : undefined);
    }
  });
});
