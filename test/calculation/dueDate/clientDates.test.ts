import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { filers, heldTaxYears, RUNS, states } from "../arbitrary";
import { day } from "../given";

describe("the dates of a client", () => {
  // Form 4868 (2023): April 15, June 17 out of the country, October 15.
  it.each([
    ["resident", "2024-04-15", "2024-04-15", "2024-10-15"],
    ["out of country", "2024-06-17", "2024-04-15", "2024-10-15"],
    ["nonresident", "2024-06-17", "2024-06-17", "2024-12-16"],
  ] as const)("of 2023, %s", (filerType, regular, payment, extended) => {
    const dates = clientDates(calendarTaxYear(2023), filerType, {}, rulebook);
    expect(dates.regular).toMatchObject({ act: "return", lastDay: day(regular) });
    expect(dates.payment).toMatchObject({ act: "payment", lastDay: day(payment) });
    expect(dates.extended).toMatchObject({ act: "extended return", lastDay: day(extended) });
  });

  it("all move under a postponement that covers them", () => {
    const postponement = { begins: day("2025-02-14"), ends: day("2025-11-03") };
    const dates = clientDates(calendarTaxYear(2024), "out of country", { postponement }, rulebook);
    for (const date of [dates.regular, dates.payment, dates.extended])
      expect(date).toMatchObject({ lastDay: day("2025-11-03"), countedFrom: day("2025-11-03") });
  });

  it("does not cover a tax year without due dates", () => {
    expect(() => clientDates(calendarTaxYear(2028), "resident", {}, rulebook)).toThrow(
      NotInTableError
    );
  });

  it("come in order: pay, file, file with the extension", () => {
    fc.assert(
      fc.property(heldTaxYears, filers, states, (year, filerType, where) => {
        const dates = clientDates(year, filerType, { state: where }, rulebook);
        expect(dates.payment.lastDay <= dates.regular.lastDay).toBe(true);
        expect(dates.regular.lastDay < dates.extended.lastDay).toBe(true);
      }),
      RUNS
    );
  });
});
