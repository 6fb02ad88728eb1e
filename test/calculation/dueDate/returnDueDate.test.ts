import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { returnDueDate } from "../../../src/calculation/dueDate/returnDueDate";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { heldTaxYears, RUNS, states } from "../arbitrary";
import { written, calendarDate } from "../../../src/calendar/calendarDate";
import { fiscalYear, state } from "../given";

// Every regular and June date of 2010 to 2028: publishedDueDates.test.ts.
describe("the due date of a return", () => {
  // 26 U.S.C. 6072(a): fiscal years end in another month; Form 4868 instructions for the same day to ask.
  it.each([
    ["2025-06-30", "2025-10-15"],
    ["2025-09-30", "2026-01-15"],
    ["2024-02-29", "2024-06-17"],
    ["2025-01-31", "2025-05-15"],
  ])("of a fiscal year that ends %s is %s", (lastDay, due) => {
    const found = returnDueDate(fiscalYear(lastDay), "resident", {}, rulebook);
    expect(written(found.lastDay)).toBe(due);
  });

  // Notice 2020-23: due April 1 to July 14, 2020.
  it("of a fiscal year whose day fell into the postponement of 2020 moves with it", () => {
    const found = returnDueDate(fiscalYear("2020-01-31"), "resident", {}, rulebook);
    expect(written(found.lastDay)).toBe("2020-07-15");
  });

  // 26 CFR 1.6081-5(a)(5), (6): the June day is a day of its own, Patriots' Day does not reach it.
  it("out of the country is in June whatever state was left behind", () => {
    const year = calendarTaxYear(2018);
    const found = returnDueDate(year, "out of country", { state: state("MA") }, rulebook);
    expect(found).toMatchObject({
      lastDay: calendarDate("2019-06-17"),
      countedFrom: calendarDate("2019-06-15"),
    });
  });

  it("carries the act and the law", () => {
    const found = returnDueDate(calendarTaxYear(2025), "resident", {}, rulebook);
    expect(found.act).toBe("return");
    expect(found.source.citation).toContain("6072(a)");
  });

  it.each([2008, 2028])("does not cover tax year %i", (year) => {
    expect(() => returnDueDate(calendarTaxYear(year), "resident", {}, rulebook)).toThrow(
      NotInTableError
    );
  });

  it("comes two months later out of the country, never earlier for any state", () => {
    fc.assert(
      fc.property(heldTaxYears, states, (year, where) => {
        const here = returnDueDate(year, "resident", { state: where }, rulebook);
        const elsewhere = returnDueDate(year, "resident", {}, rulebook);
        const abroad = returnDueDate(year, "out of country", { state: where }, rulebook);
        expect(here.lastDay >= elsewhere.lastDay).toBe(true);
        expect(here.countedFrom).toBe(elsewhere.countedFrom);
        expect(abroad.lastDay >= here.lastDay).toBe(true);
      }),
      RUNS
    );
  });
});
