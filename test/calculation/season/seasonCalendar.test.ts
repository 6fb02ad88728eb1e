import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, compareDates, written } from "../../../src/calendar/calendarDate";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import type { FilerType } from "../../../src/calculation/filerType";
import { seasonCalendar } from "../../../src/calculation/season/seasonCalendar";
import type { SeasonDate } from "../../../src/calculation/season/seasonDate";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { CALENDAR_SUBJECTS, type CalendarSubject } from "../../../src/rules/calendarWords";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { filers, RUNS, states } from "../arbitrary";
import { day, state } from "../given";

const calendar = (year: number, filerType: FilerType = "resident"): readonly SeasonDate[] =>
  seasonCalendar(calendarTaxYear(year), filerType, {}, "return", rulebook);
const dateOf = (dates: readonly SeasonDate[], what: string): string | undefined =>
  dates.filter((date) => date.label.startsWith(what)).map(({ date }) => written(date))[0];

describe("the deadlines of a client", () => {
  // irs.gov 2026 season announcement; Form 4868; 26 U.S.C. 219(f)(3); 61st day after October 15: section 6651(a).
  it("of 2025 are all listed", () => {
    const dates = calendar(2025).map(({ label: what, date: on }) => `${written(on)} ${what}`);
    expect([...dates].sort()).toEqual([
      "2026-04-15 Contribute to an IRA, Roth IRA, HSA or Coverdell account for the tax year",
      "2026-04-15 File or request an extension",
      "2026-04-15 First 2026 estimated tax installment",
      "2026-04-15 Pay the tax (interest starts after this date)",
      "2026-06-15 Second 2026 estimated tax installment",
      "2026-09-15 Third 2026 estimated tax installment",
      "2026-10-15 File the extended return",
      "2026-12-14 Last day before the minimum failure-to-file penalty",
      "2027-01-15 Fourth 2026 estimated tax installment",
    ]);
  });

  it("are all there on the subject all, each once", () => {
    const of = (subject: CalendarSubject | "all"): readonly string[] =>
      seasonCalendar(calendarTaxYear(2025), "out of country", {}, subject, rulebook).map(
        ({ label, date }) => `${written(date)} ${label}`
      );
    const each = new Set(CALENDAR_SUBJECTS.flatMap((subject) => of(subject)));
    expect(of("all").toSorted()).toEqual([...each].toSorted());
  });

  it("out of the country are in June to request and in April to pay", () => {
    const dates = calendar(2025, "out of country");
    expect(dateOf(dates, "Pay the tax")).toBe("2026-04-15");
    expect(dateOf(dates, "Contribute to an IRA")).toBe("2026-04-15");
    expect(dateOf(dates, "File or request")).toBe("2026-06-15");
    expect(dateOf(dates, "File the extended")).toBe("2026-10-15");
  });

  // 26 U.S.C. 6654(j)(2): June 15, September 15, January 15.
  it("of a nonresident have three installments", () => {
    const dates = calendar(2025, "nonresident").filter(({ label }) =>
      label.includes("installment")
    );
    expect(dates.map(({ label, date }) => `${written(date)} ${label}`)).toEqual([
      "2026-06-15 First 2026 estimated tax installment",
      "2026-09-15 Second 2026 estimated tax installment",
      "2027-01-15 Third 2026 estimated tax installment",
    ]);
  });

  // Rev. Rul. 2015-13: the return of a Massachusetts resident moves, the first installment does not.
  it("in Massachusetts do not move the first installment", () => {
    const dates = seasonCalendar(
      calendarTaxYear(2023),
      "resident",
      { state: state("MA") },
      "return",
      rulebook
    );
    expect(dateOf(dates, "File or request")).toBe("2024-04-17");
    expect(dateOf(dates, "First 2024 estimated")).toBe("2024-04-15");
  });

  // IRS release on the Los Angeles County wildfires: contributions and installments are postponed too.
  it("move with a disaster postponement", () => {
    const postponement = { begins: day("2025-01-07"), ends: day("2025-10-15") };
    const dates = seasonCalendar(
      calendarTaxYear(2024),
      "resident",
      { postponement },
      "return",
      rulebook
    );
    const moved = dates.filter((date) => date.date === day("2025-10-15"));
    expect(moved).toHaveLength(7);
    expect(dateOf(dates, "Fourth 2025 estimated")).toBe("2026-01-15");
  });

  it("say from which date they moved and why", () => {
    const filing = calendar(2022).find((date) => date.label.startsWith("File or request"));
    expect(filing?.moves).toMatchObject([
      {
        from: day("2023-04-15"),
        to: day("2023-04-18"),
        because: "Saturday, Sunday, Emancipation Day",
      },
    ]);
  });

  it("do not move a date that the law counts in days", () => {
    const counted = calendar(2022).find((date) => date.label.includes("minimum failure-to-file"));
    expect(counted?.moves).toEqual([]);
  });

  it("leave out the installments of a year that the table does not cover", () => {
    const estimates = (year: number): number =>
      calendar(year).filter((date) => date.label.includes("estimated tax")).length;
    expect(estimates(2026)).toBe(4);
    expect(estimates(2027)).toBe(0);
    expect(dateOf(calendar(2027), "File or request")).toBe("2028-04-18");
  });

  it.each([2008, 2028])("do not cover tax year %i", (year) => {
    expect(() => calendar(year)).toThrow(NotInTableError);
  });

  it("are in order of dates, each with a source, and agree with the client's dates", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2009, max: 2027 }),
        filers,
        states,
        (year, filerType, where) => {
          const taxYear = calendarTaxYear(year);
          const circumstances = { state: where };
          const dates = seasonCalendar(taxYear, filerType, circumstances, "return", rulebook);
          const days = dates.map((date) => date.date);
          expect([...days].sort(compareDates)).toEqual(days);
          for (const date of dates) expect(date.source.citation).not.toBe("");
          const { regular, payment, extended } = clientDates(
            taxYear,
            filerType,
            circumstances,
            rulebook
          );
          expect(dateOf(dates, "Pay the tax")).toBe(written(payment.lastDay));
          expect(dateOf(dates, "File or request")).toBe(written(regular.lastDay));
          expect(dateOf(dates, "File the extended")).toBe(written(extended.lastDay));
          expect(dateOf(dates, "Last day before")).toBe(written(addDays(extended.countedFrom, 60)));
        }
      ),
      RUNS
    );
  });
});
