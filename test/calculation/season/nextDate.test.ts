import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { written, addDays, daysBetween } from "../../../src/calendar/calendarDate";
import type { ClientDates } from "../../../src/calculation/dueDate/clientDates";
import { nextDate } from "../../../src/calculation/season/nextDate";
import { requestStage } from "../../../src/calculation/season/requestStage";
import { rulebook } from "../../../src/rules/rulebook";
import { daysFrom, filers, RUNS } from "../arbitrary";
import { day, dueOn } from "../given";
import { givenRequest, type GivenRequest } from "../request/givenRequest";

/** The next deadline as text: what is due, the date, days left. */
function next(given: GivenRequest): string | undefined {
  const { dates, record, asOf } = givenRequest(given);
  const found = nextDate(dates, record, asOf, rulebook);
  return found && `${found.acts.join(" and ")} ${written(found.date)} ${String(found.daysLeft)}`;
}

const asked = { requestedOn: "2026-04-10", confirmedOn: "2026-04-10" };
const rejected = { requestedOn: "2026-04-14", rejectedOn: "2026-04-15" };
const early = { requestedOn: "2026-04-10", rejectedOn: "2026-04-10" };

// 26 U.S.C. 6151(a): the tax is paid by the due date of the return without any extension.
describe("the next deadline of a client", () => {
  it.each([
    ["2026-04-01", {}, "request or file and pay 2026-04-15 14"],
    ["2026-04-15", {}, "request or file and pay 2026-04-15 0"],
    ["2026-04-16", {}, "file 2026-04-15 -1"],
    ["2026-04-01", { paidOn: "2026-04-01" }, "request or file 2026-04-15 14"],
    ["2026-04-01", { paidOn: "2026-04-02" }, "request or file and pay 2026-04-15 14"],
    ["2026-04-12", asked, "pay 2026-04-15 3"],
    ["2026-04-15", asked, "pay 2026-04-15 0"],
    ["2026-04-16", asked, "file 2026-10-15 182"],
    ["2026-04-12", { ...asked, paidOn: "2026-04-10" }, "file 2026-10-15 186"],
    ["2026-10-15", asked, "file 2026-10-15 0"],
    ["2026-10-16", asked, "file 2026-10-15 -1"],
    ["2026-04-15", rejected, "pay 2026-04-15 0"],
    ["2026-04-15", { ...rejected, paidOn: "2026-04-14" }, "resend the request 2026-04-20 5"],
    ["2026-04-16", rejected, "resend the request 2026-04-20 4"],
    ["2026-04-17", rejected, "resend the request 2026-04-20 3"],
    ["2026-04-20", rejected, "resend the request 2026-04-20 0"],
    ["2026-04-21", rejected, "file 2026-04-20 -1"],
    ["2026-04-12", early, "resend the request and pay 2026-04-15 3"],
    ["2026-04-12", { ...early, paidOn: "2026-04-10" }, "resend the request 2026-04-15 3"],
    ["2026-04-16", early, "file 2026-04-15 -1"],
    ["2026-04-12", { ...early, rejectedOn: "2026-04-11" }, "pay 2026-04-15 3"],
    ["2026-04-16", { ...early, rejectedOn: "2026-04-11" }, "resend the request 2026-04-16 0"],
    ["2026-04-17", { ...early, rejectedOn: "2026-04-11" }, "file 2026-04-16 -1"],
    ["2026-04-21", { ...rejected, confirmedOn: "2026-04-20" }, "file 2026-10-15 177"],
    ["2026-04-21", { ...rejected, confirmedOn: "2026-04-21" }, "file 2026-04-20 -1"],
    ["2026-04-17", { requestedOn: "2026-04-16" }, "file 2026-04-15 -2"],
    ["2026-04-10", { filedOn: "2026-04-10" }, undefined],
  ])("on %s with %j is %s", (asOf, record, text) => {
    expect(next({ asOf, record })).toBe(text);
  });

  // 26 CFR 1.6081-5(a): the return of a taxpayer out of the country is due in June; section 6601(b)(1): the payment in April.
  it.each([
    ["2026-04-01", {}, "pay 2026-04-15 14"],
    ["2026-04-15", {}, "pay 2026-04-15 0"],
    ["2026-04-16", {}, "request or file 2026-06-15 60"],
    ["2026-04-01", { paidOn: "2026-03-01" }, "request or file 2026-06-15 75"],
    ["2026-06-16", {}, "file 2026-06-15 -1"],
  ])(
    "out of the country on %s with %j is in April to pay and in June to request: %s",
    (asOf, record, text) => {
      expect(next({ filerType: "out of country", asOf, record })).toBe(text);
    }
  );

  it("for a nonresident alien without wages is in June, also for the payment", () => {
    expect(next({ filerType: "nonresident", asOf: "2026-04-16" })).toBe(
      "request or file and pay 2026-06-15 60"
    );
  });

  it("is the payment due date if only that is still to come", () => {
    const dates: ClientDates = {
      regular: dueOn("2026-04-15"),
      payment: dueOn("2026-05-01", "2026-05-01", "payment"),
      extended: dueOn("2026-10-15", "2026-10-15", "extended return"),
    };
    const after = (asOf: string) => nextDate(dates, {}, day(asOf), rulebook);
    expect(after("2026-04-16")).toEqual({ date: day("2026-05-01"), acts: ["pay"], daysLeft: 15 });
    expect(after("2026-04-15")).toEqual({
      date: day("2026-04-15"),
      acts: ["request or file"],
      daysLeft: 0,
    });
    expect(after("2026-05-02")?.date).toBe(day("2026-04-15"));
  });

  const days = daysFrom("2026-03-20", "2026-11-10");
  const records = fc.record(
    {
      requestedOn: daysFrom("2026-03-20", "2026-04-18"),
      paidOn: daysFrom("2026-03-20", "2026-07-01"),
      filedOn: daysFrom("2026-03-20", "2026-11-10"),
      rejectedOn: daysFrom("2026-04-01", "2026-04-20"),
      confirmedOn: daysFrom("2026-04-01", "2026-04-20"),
    },
    { requiredKeys: [] }
  );

  it("is none only when the return is filed, and its days left are those to the date", () => {
    fc.assert(
      fc.property(filers, records, days, (filerType, record, asOf) => {
        const { dates } = givenRequest({ filerType });
        const found = nextDate(dates, record, asOf, rulebook);
        const { stage } = requestStage(dates, record, asOf, rulebook);
        expect(found === undefined).toBe(stage === "filed");
        if (!found) return;
        expect(addDays(asOf, found.daysLeft)).toBe(found.date);
        expect(found.daysLeft).toBe(daysBetween(asOf, found.date));
        if (found.acts.includes("pay")) {
          expect(found.date).toBe(dates.payment.lastDay);
          expect(found.daysLeft).toBeGreaterThanOrEqual(0);
        }
      }),
      RUNS
    );
  });

  it("is never later for unpaid tax", () => {
    fc.assert(
      fc.property(filers, records, days, (filerType, record, asOf) => {
        const { dates } = givenRequest({ filerType });
        const unpaid = nextDate(dates, { ...record, paidOn: undefined }, asOf, rulebook);
        const paid = nextDate(dates, { ...record, paidOn: asOf }, asOf, rulebook);
        if (unpaid && paid) expect(unpaid.date <= paid.date).toBe(true);
        expect(paid?.acts ?? []).not.toContain("pay");
      }),
      RUNS
    );
  });
});
