import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays } from "../../../src/calendar/calendarDate";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import { requestMethods } from "../../../src/calculation/request/requestMethods";
import { calendarTaxYear, type TaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { METHODS } from "../../../src/rules/requestWords";
import { rulebook } from "../../../src/rules/rulebook";
import { daysFrom, dollarsUpTo, filers, RUNS } from "../arbitrary";
import { day, fiscalYear, usd } from "../given";

interface Given {
  readonly taxYear?: TaxYear;
  readonly paidWithRequest?: string;
  readonly asOf?: string;
  readonly rejectedOn?: string;
}

function waysOf({ taxYear = calendarTaxYear(2025), paidWithRequest = "0", ...given }: Given) {
  const { rejectedOn } = given;
  return requestMethods(
    {
      taxYear,
      dates: clientDates(taxYear, "resident", {}, rulebook),
      paidWithRequest: usd(paidWithRequest),
      asOf: day(given.asOf ?? "2026-04-10"),
      rejectedOn: rejectedOn === undefined ? undefined : day(rejectedOn),
    },
    rulebook
  );
}

const shown = (given: Given) =>
  waysOf(given).map(({ method, closedBecause }) => `${method}: ${closedBecause ?? "open"}`);
const late = "the last day has passed";

// Form 4868 (2025), how to ask: an electronic payment marked for it, e-file, paper; fiscal years on paper only.
describe("the ways to make a request", () => {
  it("are all open with a payment, the payment itself first", () => {
    const open = ["electronic payment: open", "e-file: open", "paper: open"];
    expect(shown({ paidWithRequest: "1500" })).toEqual(open);
    expect(shown({ paidWithRequest: "0.01" })).toEqual(open);
  });

  it("without a payment begin with e-file", () => {
    expect(shown({})).toEqual([
      ...["e-file: open", "paper: open", "electronic payment: nothing is paid"],
    ]);
  });

  it("of a fiscal year are paper alone, with payment and without", () => {
    const taxYear = fiscalYear("2025-06-30");
    const closed = ["electronic payment: fiscal year", "e-file: fiscal year"];
    for (const paidWithRequest of ["0", "1500"])
      expect(shown({ taxYear, paidWithRequest, asOf: "2025-10-15" })).toEqual([
        "paper: open",
        ...closed,
      ]);
  });

  // 26 CFR 1.6081-4(b)(2): by the due date of the return.
  it("are open on the last day and closed the day after", () => {
    expect(shown({ paidWithRequest: "1", asOf: "2026-04-15" })).toContain("paper: open");
    expect(shown({ paidWithRequest: "1", asOf: "2026-04-16" })).toEqual(
      METHODS.map((method) => `${method}: ${late}`)
    );
  });

  it("each tell what they need, what proves them and the law", () => {
    for (const way of waysOf({ paidWithRequest: "1" })) {
      expect(way.lastDay).toBe("2026-04-15");
      expect(way.how).not.toBe("");
      expect(way.proof).not.toBe("");
      expect(way.source.citation).toContain("Form 4868");
    }
  });
});

// Pub. 1345: an e-filed request sent again within five calendar days after the due date is in time; the trade counts from the rejection.
describe("after a rejection", () => {
  it.each([
    ["2026-04-15", "2026-04-14", "e-file: open", "2026-04-15"],
    ["2026-04-15", "2026-04-15", "e-file: open", "2026-04-20"],
    ["2026-04-15", "2026-04-20", "e-file: open", "2026-04-20"],
    ["2026-04-15", "2026-04-21", `e-file: ${late}`, "2026-04-20"],
    ["2026-04-16", "2026-04-20", "e-file: open", "2026-04-20"],
    ["2026-04-16", "2026-04-21", `e-file: ${late}`, "2026-04-20"],
    ["2026-04-14", "2026-04-14", "e-file: open", "2026-04-19"],
    ["2026-04-14", "2026-04-19", "e-file: open", "2026-04-19"],
    ["2026-04-14", "2026-04-20", `e-file: ${late}`, "2026-04-19"],
    ["2026-04-11", "2026-04-16", "e-file: open", "2026-04-16"],
    ["2026-04-11", "2026-04-17", `e-file: ${late}`, "2026-04-16"],
    ["2026-04-10", "2026-04-15", "e-file: open", "2026-04-15"],
    ["2026-04-10", "2026-04-16", `e-file: ${late}`, "2026-04-15"],
    ["2026-04-01", "2026-04-15", "e-file: open", "2026-04-15"],
    ["2026-04-01", "2026-04-16", `e-file: ${late}`, "2026-04-15"],
  ])("on %s, e-file on %s is %s until %s", (rejectedOn, asOf, standing, lastDay) => {
    const given = { asOf, rejectedOn };
    expect(shown(given)).toContain(standing);
    for (const { method, lastDay: found } of waysOf(given))
      expect(found).toBe(method === "e-file" ? lastDay : "2026-04-15");
  });

  it("nothing but e-file is open after the last day: the payment is late all the same", () => {
    expect(
      shown({ paidWithRequest: "1500", asOf: "2026-04-17", rejectedOn: "2026-04-15" })
    ).toEqual([...["e-file: open", `electronic payment: ${late}`, `paper: ${late}`]]);
  });

  it("a rejection later than the day looked at does not count, one on the day does", () => {
    expect(shown({ asOf: "2026-04-16", rejectedOn: "2026-04-17" })).toContain(`e-file: ${late}`);
    expect(shown({ asOf: "2026-04-16", rejectedOn: "2026-04-16" })).toContain("e-file: open");
  });

  it("a fiscal year stays on paper, and its last day stays", () => {
    const taxYear = fiscalYear("2025-06-30");
    const given = { taxYear, asOf: "2025-10-17", rejectedOn: "2025-10-14" };
    expect(shown(given)).toContain("e-file: fiscal year");
    expect(shown(given)).toContain(`paper: ${late}`);
  });

  it("is refused from the day of the rejection where the days to send again are not held", () => {
    const taxYear = calendarTaxYear(2021);
    const rejectedOn = "2022-04-15";
    expect(shown({ taxYear, asOf: "2022-04-14", rejectedOn })).toContain("e-file: open");
    for (const asOf of ["2022-04-15", "2022-04-18", "2022-04-19"])
      expect(() => shown({ taxYear, asOf, rejectedOn })).toThrow(
        "Days to send a rejected request again: no figure for 2022-04-18; held only from 2023-01-01 on (rules/reject-window.json)"
      );
  });
});

// rules/request-routes.json; last days: test/fixtures/published/due-dates.json.
describe("the tax years whose ways are held", () => {
  it.each([
    [2016, "2017-04-18"],
    [2025, "2026-04-15"],
  ])("reach %d", (year, lastDay) => {
    const taxYear = calendarTaxYear(year);
    expect(waysOf({ taxYear, asOf: lastDay })[0]).toMatchObject({ method: "e-file", lastDay });
  });

  it.each([
    [2015, "no figure for 2015-12-31; held only from 2016-12-31 on"],
    [2012, "no figure for 2012-12-31; held only from 2016-12-31 on"],
    [2027, "no figure for 2027-12-31; known only through 2025-12-31"],
  ])("do not reach %d", (year, sentence) => {
    const methods = () =>
      waysOf({ taxYear: calendarTaxYear(year), asOf: `${String(year + 1)}-04-01` });
    expect(methods).toThrow(NotInTableError);
    expect(methods).toThrow(`Ways to make the request: ${sentence} (rules/request-routes.json)`);
  });
});

describe("the ways, whoever asks and when", () => {
  const years = fc.integer({ min: 2022, max: 2025 }).map(calendarTaxYear);
  const rejections = fc.option(daysFrom("2023-01-01", "2026-12-31"), { nil: undefined });

  it("are all told, the open ones first, each kind in the order of the form", () => {
    fc.assert(
      fc.property(
        ...[years, filers, dollarsUpTo(5), daysFrom("2023-04-01", "2026-07-01"), rejections],
        (taxYear, filerType, paidWithRequest, asOf, rejectedOn) => {
          const dates = clientDates(taxYear, filerType, {}, rulebook);
          const input = { taxYear, dates, paidWithRequest, asOf, rejectedOn };
          const methods = requestMethods(input, rulebook);
          const places = methods.map(({ method }) => METHODS.indexOf(method));
          const isOpen = methods.map(({ closedBecause }) => closedBecause === undefined);
          expect(places.toSorted()).toEqual([0, 1, 2]);
          expect(isOpen).toEqual(isOpen.toSorted((one, other) => Number(other) - Number(one)));
          const open = places.filter((_place, index) => isOpen[index]);
          expect(open).toEqual(open.toSorted());
        }
      ),
      RUNS
    );
  });

  it("close and do not open again as days go by, but for e-file after a rejection", () => {
    fc.assert(
      fc.property(
        ...[years, filers, dollarsUpTo(5)],
        ...[fc.integer({ min: -10, max: 10 }), fc.integer({ min: -10, max: 10 })],
        (taxYear, filerType, paidWithRequest, days, rejected) => {
          const dates = clientDates(taxYear, filerType, {}, rulebook);
          const { lastDay } = dates.regular;
          const asOf = addDays(lastDay, days);
          const openOn = (rejectedOn: typeof asOf | undefined) =>
            requestMethods({ taxYear, dates, paidWithRequest, asOf, rejectedOn }, rulebook)
              .filter(({ closedBecause }) => closedBecause === undefined)
              .map(({ method }) => method);
          expect(openOn(undefined).length > 0).toBe(days <= 0);
          const again = rejected > days ? 0 : Math.max(0, Math.min(5, rejected + 5));
          const open = openOn(addDays(lastDay, rejected));
          expect(open.includes("e-file")).toBe(days <= again);
          expect(open.includes("paper")).toBe(days <= 0);
        }
      ),
      RUNS
    );
  });
});
