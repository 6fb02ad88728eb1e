import { describe, expect, it } from "vitest";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import { plannedDates, type FilingPlan } from "../../../src/calculation/season/plannedDates";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import { written } from "../../../src/calendar/calendarDate";
import { day } from "../given";

const dates = clientDates(calendarTaxYear(2025), "resident", {}, rulebook);
const NO_PLAN: FilingPlan = {
  record: {},
  plannedFilingDate: undefined,
  plannedPaymentDate: undefined,
  validExtension: true,
  asOf: day("2026-05-01"),
};
const plannedFor = (plan: Partial<FilingPlan>): readonly string[] => {
  const { filedOn, paidOn } = plannedDates(dates, { ...NO_PLAN, ...plan });
  return [written(filedOn), written(paidOn)];
};

describe("the dates of a plan", () => {
  // Form 4868 (2025): the extended due date of a calendar-year return is October 15, 2026.
  it("are the extended due date with an extension, and the as-of date without one", () => {
    expect(plannedFor({})).toEqual(["2026-10-15", "2026-10-15"]);
    expect(plannedFor({ validExtension: false })).toEqual(["2026-05-01", "2026-05-01"]);
  });

  it("are the planned dates, and the balance is paid with the return unless planned otherwise", () => {
    const plannedFilingDate = day("2026-09-01");
    const plannedPaymentDate = day("2026-07-01");
    expect(plannedFor({ plannedFilingDate })).toEqual(["2026-09-01", "2026-09-01"]);
    expect(plannedFor({ plannedPaymentDate })).toEqual(["2026-10-15", "2026-07-01"]);
    expect(plannedFor({ plannedFilingDate, plannedPaymentDate })).toEqual([
      "2026-09-01",
      "2026-07-01",
    ]);
  });

  it("are no filing date before the as-of date while the return is not filed", () => {
    const late = { asOf: day("2026-10-20") };
    expect(plannedFor(late)).toEqual(["2026-10-20", "2026-10-20"]);
    expect(plannedFor({ ...late, plannedFilingDate: day("2026-10-19") })[0]).toBe("2026-10-20");
    expect(plannedFor({ ...late, plannedFilingDate: day("2026-10-21") })[0]).toBe("2026-10-21");
    expect(plannedFor({ ...late, record: { filedOn: day("2026-10-14") } })[0]).toBe("2026-10-14");
  });

  it("are a planned payment date that has passed, because the payment may not be recorded", () => {
    const plannedPaymentDate = day("2026-04-20");
    expect(plannedFor({ plannedPaymentDate })).toEqual(["2026-10-15", "2026-04-20"]);
  });

  it("are the recorded dates first of all", () => {
    const planned = { plannedFilingDate: day("2026-09-01"), plannedPaymentDate: day("2026-07-01") };
    const filed = { filedOn: day("2026-08-03") };
    const paid = { paidOn: day("2026-04-10") };
    expect(plannedFor({ ...planned, record: filed })).toEqual(["2026-08-03", "2026-07-01"]);
    expect(plannedFor({ ...planned, record: paid })).toEqual(["2026-09-01", "2026-04-10"]);
    expect(plannedFor({ record: filed })).toEqual(["2026-08-03", "2026-08-03"]);
    expect(plannedFor({ record: { ...filed, ...paid } })).toEqual(["2026-08-03", "2026-04-10"]);
  });
});
