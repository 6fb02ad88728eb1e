import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays } from "../../../src/calendar/calendarDate";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import type { FilerType } from "../../../src/calculation/filerType";
import { seasonCalendar, type SeasonDate } from "../../../src/calculation/season/seasonCalendar";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { filers, RUNS, states } from "../arbitrary";
import { day, state } from "../given";

const calendar = (year: number, filerType: FilerType = "resident"): readonly SeasonDate[] =>
  seasonCalendar(calendarTaxYear(year), filerType, {}, rulebook);
const dayOf = (dates: readonly SeasonDate[], what: string): string | undefined =>
  dates.find((date) => date.what.startsWith(what))?.day;

describe("the season of a client", () => {
  // irs.gov 2026 season announcement; Form 4868; 26 U.S.C. 219(f)(3); 61st day after October 15: section 6651(a).
  it("of 2025 names every date", () => {
    const dates = calendar(2025).map(({ what, day: on }) => `${on} ${what}`);
    expect([...dates].sort()).toEqual([
      "2026-04-15 Contribute to an IRA or HSA for the tax year",
      "2026-04-15 File, or ask for the extension",
      "2026-04-15 First estimate of the new year",
      "2026-04-15 Pay the tax: interest runs from here",
      "2026-06-15 Second estimate of the new year",
      "2026-09-15 Third estimate of the new year",
      "2026-10-15 File with the extension",
      "2026-12-14 Last day before the minimum addition for a late extended return",
      "2027-01-15 Fourth estimate of the new year",
    ]);
  });

  it("abroad asks in June and pays in April", () => {
    const dates = calendar(2025, "out of country");
    expect(dayOf(dates, "Pay the tax")).toBe("2026-04-15");
    expect(dayOf(dates, "Contribute to an IRA")).toBe("2026-04-15");
    expect(dayOf(dates, "File, or ask")).toBe("2026-06-15");
    expect(dayOf(dates, "File with the extension")).toBe("2026-10-15");
  });

  // Rev. Rul. 2015-13: the return of a Massachusetts resident moves, the first estimate does not.
  it("in Massachusetts keeps the national day for the first estimate", () => {
    const dates = seasonCalendar(
      calendarTaxYear(2023),
      "resident",
      { state: state("MA") },
      rulebook
    );
    expect(dayOf(dates, "File, or ask")).toBe("2024-04-17");
    expect(dayOf(dates, "First estimate")).toBe("2024-04-15");
  });

  // Relief counts for contributions and estimates too: release on the Los Angeles County wildfires.
  it("moves with disaster relief", () => {
    const postponement = { begins: day("2025-01-07"), postponementEnds: day("2025-10-15") };
    const dates = seasonCalendar(calendarTaxYear(2024), "resident", { postponement }, rulebook);
    const moved = dates.filter((date) => date.day === "2025-10-15");
    expect(moved).toHaveLength(7);
    expect(dayOf(dates, "Fourth estimate")).toBe("2026-01-15");
  });

  it("says from where a date moved and why", () => {
    const filing = calendar(2022).find((date) => date.what.startsWith("File, or ask"));
    expect(filing?.moves).toMatchObject([
      { from: "2023-04-15", to: "2023-04-18", because: "Saturday, Sunday, Emancipation Day" },
    ]);
  });

  it("moves no day that the law counts in days", () => {
    const counted = calendar(2022).find((date) => date.what.includes("minimum addition"));
    expect(counted?.moves).toEqual([]);
  });

  it("leaves out the estimates of a year whose dates are not held yet", () => {
    const estimates = (year: number): number =>
      calendar(year).filter((date) => date.what.includes("estimate")).length;
    expect(estimates(2026)).toBe(4);
    expect(estimates(2027)).toBe(0);
    expect(dayOf(calendar(2027), "File, or ask")).toBe("2028-04-18");
  });

  it.each([2008, 2028])("refuses tax year %i, whose dates are not held", (year) => {
    expect(() => calendar(year)).toThrow(NotInTableError);
  });

  it("rises by day, with a source each, and agrees with the client's dates", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2009, max: 2027 }),
        filers,
        states,
        (year, filerType, where) => {
          const taxYear = calendarTaxYear(year);
          const circumstances = { state: where };
          const dates = seasonCalendar(taxYear, filerType, circumstances, rulebook);
          const days = dates.map((date) => date.day);
          expect([...days].sort()).toEqual(days);
          for (const date of dates) expect(date.source.citation).not.toBe("");
          const { regular, payment, extended } = clientDates(
            taxYear,
            filerType,
            circumstances,
            rulebook
          );
          expect(dayOf(dates, "Pay the tax")).toBe(payment.lastDay);
          expect(dayOf(dates, "File, or ask")).toBe(regular.lastDay);
          expect(dayOf(dates, "File with")).toBe(extended.lastDay);
          expect(dayOf(dates, "Last day before")).toBe(addDays(extended.countedFrom, 60));
        }
      ),
      RUNS
    );
  });
});
