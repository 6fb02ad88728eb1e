import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { installmentDueDate } from "../../../src/calculation/dueDate/installmentDueDate";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { heldTaxYears, RUNS } from "../arbitrary";
import { day, fiscalYear } from "../given";

const numbers = [1, 2, 3, 4] as const;

// Every date of the tax years 2019 to 2027: publishedDueDates.test.ts.
describe("the due date of an installment", () => {
  // 26 U.S.C. 6654(c)(2): April 15, June 15, September 15, January 15 of the following year.
  it("keeps the four days of the law under the moves", () => {
    const named = numbers.map(
      (number) => installmentDueDate(calendarTaxYear(2022), number, undefined, rulebook).countedFrom
    );
    expect(named).toEqual(["2022-04-15", "2022-06-15", "2022-09-15", "2023-01-15"]);
  });

  // 26 U.S.C. 6654(k)(1): the corresponding months of a fiscal year.
  it("of a fiscal year falls in the corresponding months", () => {
    const year = fiscalYear("2026-06-30");
    const days = numbers.map(
      (number) => installmentDueDate(year, number, undefined, rulebook).lastDay
    );
    expect(days).toEqual(["2025-10-15", "2025-12-15", "2026-03-16", "2026-07-15"]);
  });

  // Release on the Los Angeles County wildfires: estimates of April to September 2025 to October 15.
  it("moves with a disaster postponement", () => {
    const postponement = { begins: day("2025-01-07"), postponementEnds: day("2025-10-15") };
    const days = numbers.map(
      (number) => installmentDueDate(calendarTaxYear(2025), number, postponement, rulebook).lastDay
    );
    expect(days).toEqual(["2025-10-15", "2025-10-15", "2025-10-15", "2026-01-15"]);
  });

  // IR-2018-100 (from memory) named payments due April 17, 2018.
  it("of April 2018 had the one more day", () => {
    expect(installmentDueDate(calendarTaxYear(2018), 1, undefined, rulebook).lastDay).toBe(
      "2018-04-18"
    );
  });

  it.each([2008, 2028])("does not cover tax year %i", (year) => {
    expect(() => installmentDueDate(calendarTaxYear(year), 1, undefined, rulebook)).toThrow(
      NotInTableError
    );
  });

  it("never comes before the one before it", () => {
    fc.assert(
      fc.property(heldTaxYears, (year) => {
        const days = numbers.map(
          (number) => installmentDueDate(year, number, undefined, rulebook).lastDay
        );
        expect([...days].sort()).toEqual(days);
      }),
      RUNS
    );
  });
});
