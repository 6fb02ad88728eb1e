import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  calendarDate,
  written,
  addMonths,
  lastDayOfMonth,
} from "../../../src/calendar/calendarDate";
import { extendedDueDate } from "../../../src/calculation/dueDate/extendedDueDate";
import { returnDueDate } from "../../../src/calculation/dueDate/returnDueDate";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { daysFrom, heldTaxYears, RUNS } from "../arbitrary";
import { fiscalYear } from "../given";

// Every October date of 2010 to 2028: publishedDueDates.test.ts.
describe("the due date with the extension", () => {
  // 26 CFR 1.6081-4(a): six months from the day prescribed, April 15, not from April 18.
  it("of 2022 is counted from April 15, 2023, a Saturday: October 15 is a Sunday, so the 16th", () => {
    const found = extendedDueDate(calendarTaxYear(2022), "resident", {}, rulebook);
    expect(found).toMatchObject({
      countedFrom: calendarDate("2023-10-15"),
      lastDay: calendarDate("2023-10-16"),
    });
  });

  it("of 2016 is October 16, 2017 though April ran to the 18th", () => {
    const found = extendedDueDate(calendarTaxYear(2016), "resident", {}, rulebook);
    expect(written(found.lastDay)).toBe("2017-10-16");
  });

  // 26 CFR 1.6081-4(b)(2): the six months run beside the two.
  it("out of the country is the same October day", () => {
    const found = extendedDueDate(calendarTaxYear(2025), "out of country", {}, rulebook);
    expect(written(found.lastDay)).toBe("2026-10-15");
  });

  // 26 CFR 1.6081-4(a) by its words; Pub. 513 (2008) says October 15: an open conflict.
  it("of a nonresident without wages is in December", () => {
    const found = extendedDueDate(calendarTaxYear(2025), "nonresident", {}, rulebook);
    expect(written(found.lastDay)).toBe("2026-12-15");
  });

  // Notice 2020-23: an extension asked for by July 15, 2020 ran only to October 15.
  it("was not counted from the postponed days of 2020 and 2021", () => {
    const dates = [2019, 2020].map(
      (year) => extendedDueDate(calendarTaxYear(year), "resident", {}, rulebook).lastDay
    );
    expect(dates).toEqual([calendarDate("2020-10-15"), calendarDate("2021-10-15")]);
  });

  it.each([
    ["2025-06-30", "2026-04-15"],
    ["2024-08-31", "2025-06-16"],
    ["2019-08-31", "2020-07-15"],
  ])("of a fiscal year that ends %s is %s", (lastDay, due) => {
    const found = extendedDueDate(fiscalYear(lastDay), "resident", {}, rulebook);
    expect(written(found.lastDay)).toBe(due);
  });

  it.each([2008, 2028])("does not cover tax year %i", (year) => {
    expect(() => extendedDueDate(calendarTaxYear(year), "resident", {}, rulebook)).toThrow(
      NotInTableError
    );
  });

  it("is six months after the date the law names, whatever moved that", () => {
    const yearEnds = daysFrom("2021-01-01", "2027-12-31").map(lastDayOfMonth);
    fc.assert(
      fc.property(yearEnds, (lastDay) => {
        const regular = returnDueDate(fiscalYear(written(lastDay)), "resident", {}, rulebook);
        const extended = extendedDueDate(fiscalYear(written(lastDay)), "resident", {}, rulebook);
        const named = regular.moves[0]?.from ?? regular.lastDay;
        expect(extended.moves[0]?.from ?? extended.lastDay).toBe(addMonths(named, 6));
      }),
      RUNS
    );
  });

  it("is later than the day without it", () => {
    fc.assert(
      fc.property(heldTaxYears, (year) => {
        const regular = returnDueDate(year, "out of country", {}, rulebook);
        const extended = extendedDueDate(year, "out of country", {}, rulebook);
        expect(extended.lastDay > regular.lastDay).toBe(true);
      }),
      RUNS
    );
  });
});
