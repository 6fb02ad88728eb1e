import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { installmentDueDate } from "../../../src/calculation/dueDate/installmentDueDate";
import { installmentNumbers } from "../../../src/calculation/dueDate/installmentNumbers";
import { calendarTaxYear, type TaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { heldTaxYears, RUNS } from "../arbitrary";
import { compareDates, written } from "../../../src/calendar/calendarDate";
import { day, fiscalYear } from "../given";

const numbers = [1, 2, 3, 4] as const;

// Every date of the tax years 2019 to 2027: publishedDueDates.test.ts.
describe("the due date of an installment", () => {
  // 26 U.S.C. 6654(c)(2): April 15, June 15, September 15, January 15 of the following year.
  it("keeps the four days of the law under the moves", () => {
    const named = numbers.map(
      (number) =>
        installmentDueDate(calendarTaxYear(2022), "resident", number, undefined, rulebook)
          .countedFrom
    );
    expect(named).toEqual([
      day("2022-04-15"),
      day("2022-06-15"),
      day("2022-09-15"),
      day("2023-01-15"),
    ]);
  });

  // 26 U.S.C. 6654(k)(1): the corresponding months of a fiscal year.
  it("of a fiscal year falls in the corresponding months", () => {
    const year = fiscalYear("2026-06-30");
    const days = numbers.map(
      (number) => installmentDueDate(year, "resident", number, undefined, rulebook).lastDay
    );
    expect(days).toEqual([
      day("2025-10-15"),
      day("2025-12-15"),
      day("2026-03-16"),
      day("2026-07-15"),
    ]);
  });

  // 26 U.S.C. 6654(j)(2): June 15, September 15, January 15 of the following year; (k)(1) for a fiscal year.
  it("of a nonresident is one of three", () => {
    const dates = (taxYear: TaxYear) =>
      installmentNumbers("nonresident").map(
        (number) =>
          installmentDueDate(taxYear, "nonresident", number, undefined, rulebook).countedFrom
      );
    expect(dates(calendarTaxYear(2025))).toEqual([
      day("2025-06-15"),
      day("2025-09-15"),
      day("2026-01-15"),
    ]);
    expect(dates(fiscalYear("2026-06-30"))).toEqual([
      day("2025-12-15"),
      day("2026-03-15"),
      day("2026-07-15"),
    ]);
    expect(() =>
      installmentDueDate(calendarTaxYear(2025), "nonresident", 4, undefined, rulebook)
    ).toThrow(new RangeError("nonresident: there is no installment 4"));
  });

  // 26 U.S.C. 6654(c)(1), (2): four for everyone else, out of the country too.
  it("out of the country is the same as of a resident", () => {
    const first = installmentDueDate(
      calendarTaxYear(2025),
      "out of country",
      1,
      undefined,
      rulebook
    );
    expect(written(first.lastDay)).toBe("2025-04-15");
  });

  // Release on the Los Angeles County wildfires: estimates of April to September 2025 to October 15.
  it("moves with a disaster postponement", () => {
    const postponement = { begins: day("2025-01-07"), ends: day("2025-10-15") };
    const days = numbers.map(
      (number) =>
        installmentDueDate(calendarTaxYear(2025), "resident", number, postponement, rulebook)
          .lastDay
    );
    expect(days).toEqual([
      day("2025-10-15"),
      day("2025-10-15"),
      day("2025-10-15"),
      day("2026-01-15"),
    ]);
  });

  // IR-2018-100 (from memory) named payments due April 17, 2018.
  it("of April 2018 had the one more day", () => {
    expect(
      written(installmentDueDate(calendarTaxYear(2018), "resident", 1, undefined, rulebook).lastDay)
    ).toBe("2018-04-18");
  });

  it.each([2008, 2028])("does not cover tax year %i", (year) => {
    expect(() =>
      installmentDueDate(calendarTaxYear(year), "resident", 1, undefined, rulebook)
    ).toThrow(NotInTableError);
  });

  it("never comes before the one before it", () => {
    fc.assert(
      fc.property(heldTaxYears, (year) => {
        const days = numbers.map(
          (number) => installmentDueDate(year, "resident", number, undefined, rulebook).lastDay
        );
        expect([...days].sort(compareDates)).toEqual(days);
      }),
      RUNS
    );
  });
});
