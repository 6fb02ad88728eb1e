import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { paymentDueDate } from "../../../src/calculation/dueDate/paymentDueDate";
import { returnDueDate } from "../../../src/calculation/dueDate/returnDueDate";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { heldTaxYears, RUNS, states } from "../arbitrary";
import { written, calendarDate } from "../../../src/calendar/calendarDate";
import { state } from "../given";

// Every April date of 2010 to 2028: publishedDueDates.test.ts.
describe("the payment due date", () => {
  // irs.gov page on the automatic two months: interest still from the regular date.
  it.each([
    ["resident", "2024-04-15"],
    ["out of country", "2024-04-15"],
    ["nonresident", "2024-06-17"],
  ] as const)("for 2023, %s, is %s", (filerType, lastDay) => {
    const found = paymentDueDate(calendarTaxYear(2023), filerType, {}, rulebook);
    expect(found.act).toBe("payment");
    expect(written(found.lastDay)).toBe(lastDay);
  });

  // Rev. Rul. 2015-13: tax payable with the return moves with it (section 6151(a)).
  it("moves with the return of a resident of Maine", () => {
    const found = paymentDueDate(
      calendarTaxYear(2023),
      "resident",
      { state: state("ME") },
      rulebook
    );
    expect(found).toMatchObject({
      lastDay: calendarDate("2024-04-17"),
      countedFrom: calendarDate("2024-04-15"),
    });
  });

  // Notices 2020-23 and 2021-21: interest begins July 16, 2020 and May 18, 2021.
  it.each([
    [2019, "2020-07-15"],
    [2020, "2021-05-17"],
  ])("for %i was postponed for everyone to %s, and the time disregarded", (year, lastDay) => {
    for (const filerType of ["resident", "out of country"] as const) {
      const found = paymentDueDate(calendarTaxYear(year), filerType, {}, rulebook);
      expect(found).toMatchObject({
        lastDay: calendarDate(lastDay),
        countedFrom: calendarDate(lastDay),
      });
    }
  });

  it.each([2008, 2028])("does not cover tax year %i", (year) => {
    expect(() => paymentDueDate(calendarTaxYear(year), "out of country", {}, rulebook)).toThrow(
      NotInTableError
    );
  });

  it("is the return's day for a resident and a nonresident, before it out of the country", () => {
    fc.assert(
      fc.property(heldTaxYears, states, (year, where) => {
        const circumstances = { state: where };
        for (const filerType of ["resident", "nonresident"] as const) {
          const payment = paymentDueDate(year, filerType, circumstances, rulebook);
          expect(payment.lastDay).toBe(
            returnDueDate(year, filerType, circumstances, rulebook).lastDay
          );
        }
        const abroad = paymentDueDate(year, "out of country", circumstances, rulebook);
        expect(abroad.lastDay).toBe(
          paymentDueDate(year, "resident", circumstances, rulebook).lastDay
        );
      }),
      RUNS
    );
  });
});
