import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { written, daysBetween } from "../../../src/calendar/calendarDate";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import { exchangeDate } from "../../../src/calculation/dueDate/exchangeDate";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { daysFrom, RUNS } from "../arbitrary";
import { day } from "../given";

const datesOf2025 = clientDates(calendarTaxYear(2025), "resident", {}, rulebook);
const receivedBy = (soldOn: string, validExtension: boolean) =>
  exchangeDate(day(soldOn), datesOf2025, validExtension, rulebook);

describe("the last day of a like-kind exchange", () => {
  // 26 U.S.C. 1031(a)(3)(B), computed: LIKEKIND-2025.
  it.each([
    ["2025-11-10", false, "2026-04-15"],
    ["2025-11-10", true, "2026-05-09"],
    ["2025-10-17", false, "2026-04-15"],
    ["2025-10-16", false, "2026-04-14"],
    ["2025-01-02", false, "2025-07-01"],
    ["2025-12-31", true, "2026-06-29"],
  ])("of a sale on %s, extension %j, is %s", (soldOn, validExtension, date) => {
    expect(written(receivedBy(soldOn, validExtension))).toBe(date);
  });

  it("is never later than 180 days after the sale or the due date, and is one of the two", () => {
    fc.assert(
      fc.property(daysFrom("2025-01-01", "2025-12-31"), fc.boolean(), (soldOn, isExtended) => {
        const due = isExtended ? "2026-10-15" : "2026-04-15";
        const date = receivedBy(written(soldOn), isExtended);
        expect(date <= day(due) && daysBetween(soldOn, date) <= 180).toBe(true);
        expect(date === day(due) || daysBetween(soldOn, date) === 180).toBe(true);
      }),
      RUNS
    );
  });

  it("is not covered before the table begins", () => {
    expect(() => receivedBy("2008-12-31", true)).toThrow(NotInTableError);
    expect(() => receivedBy("2009-01-01", true)).not.toThrow();
  });
});
