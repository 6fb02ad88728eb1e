import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { written, addDays, daysBetween } from "../../../src/calendar/calendarDate";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import { resendDeadline } from "../../../src/calculation/request/resendDeadline";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/perfection-period.json";
import { filers, RUNS, states } from "../arbitrary";
import { day, dueOn, state } from "../given";
import { FILER_TYPES } from "../../../src/calculation/filerType";

describe("the last day to resend a rejected request", () => {
  it.each(published.cases)("$case ($source.mark)", ({ inputs, expected }) => {
    const filerType = FILER_TYPES.find((known) => known === inputs.filerType) ?? "resident";
    const residence = inputs.state === null ? {} : { state: state(inputs.state) };
    const { regular } = clientDates(
      calendarTaxYear(inputs.taxYear),
      filerType,
      residence,
      rulebook
    );
    expect(written(regular.lastDay)).toBe(expected.due);
    expect(written(resendDeadline(regular, day(inputs.rejectedOn), rulebook))).toBe(
      expected.sendAgainBy
    );
  });

  // Pub. 1345: five days from the due date; the trade: from the rejection; 26 CFR 1.6081-4(b): the due date stands in any case.
  it.each([
    ["2026-01-01", "2026-04-15"],
    ["2026-04-09", "2026-04-15"],
    ["2026-04-10", "2026-04-15"],
    ["2026-04-11", "2026-04-16"],
    ["2026-04-13", "2026-04-18"],
    ["2026-04-14", "2026-04-19"],
    ["2026-04-15", "2026-04-20"],
    ["2026-04-16", "2026-04-20"],
    ["2026-04-20", "2026-04-20"],
    ["2026-05-01", "2026-04-20"],
  ])("of one rejected on %s, due 2026-04-15, is %s", (rejectedOn, again) => {
    expect(written(resendDeadline(dueOn("2026-04-15"), day(rejectedOn), rulebook))).toBe(again);
  });

  // IR-2025-41, as reported: a disaster postponement does not move the e-file deadline.
  it.each([
    ["2026-04-09", "2026-04-15"],
    ["2026-04-13", "2026-04-18"],
    ["2026-04-15", "2026-04-20"],
    ["2026-06-08", "2026-04-20"],
  ])(
    "counts from the due date without a disaster postponement: rejected on %s, %s",
    (rejectedOn, again) => {
      const postponement = { begins: day("2026-01-22"), ends: day("2026-06-08") };
      const { regular } = clientDates(
        calendarTaxYear(2025),
        "resident",
        { postponement },
        rulebook
      );
      expect(written(resendDeadline(regular, day(rejectedOn), rulebook))).toBe(again);
    }
  );

  it("is five days on from the due date or the rejection, the earlier, and not before the due date, weekends and holidays counted", () => {
    const years = fc.integer({ min: 2022, max: 2025 }).map(calendarTaxYear);
    const fromDue = fc.integer({ min: -20, max: 20 });
    fc.assert(
      fc.property(years, filers, states, fromDue, (year, filerType, residence, rejected) => {
        const { regular } = clientDates(year, filerType, { state: residence }, rulebook);
        const again = resendDeadline(regular, addDays(regular.lastDay, rejected), rulebook);
        const days = rejected <= -5 ? 0 : rejected >= 0 ? 5 : 5 + rejected;
        expect(daysBetween(regular.lastDay, again)).toBe(days);
      }),
      RUNS
    );
  });

  it.each([
    ["2023-01-01", "2023-01-06"],
    ["2026-12-31", "2027-01-05"],
  ])("is in the table for a request due %s", (due, again) => {
    expect(written(resendDeadline(dueOn(due), day(due), rulebook))).toBe(again);
  });

  it.each([
    [
      "2022-12-31",
      "There is no figure for 12/31/2022. The table begins on 1/1/2023 (rules/perfection-period.json)",
    ],
    [
      "2027-01-01",
      "There is no figure for 1/1/2027. The table covers dates through 12/31/2026 (rules/perfection-period.json)",
    ],
  ])("is not in the table for a request due %s, whenever it was rejected", (due, sentence) => {
    for (const rejectedOn of [due, "2023-01-02", "2026-12-30"])
      expect(() => resendDeadline(dueOn(due), day(rejectedOn), rulebook)).toThrow(sentence);
  });
});
