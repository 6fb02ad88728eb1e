import { describe, expect, it } from "vitest";
import { charges } from "../../../src/calculation/penalty/charges";
import { plannedReturn, type PlannedReturn } from "../../../src/calculation/season/plannedReturn";
import { rulebook } from "../../../src/rules/rulebook";
import { day } from "../given";
import { written } from "../../../src/calendar/calendarDate";
import { givenRequest, type GivenRequest } from "../request/givenRequest";

interface Given extends GivenRequest {
  readonly plannedFilingDate?: string;
  readonly plannedPaymentDate?: string;
}

/** Total tax of $20,000 and payments of $15,000, unless given otherwise; $2,000 paid with the request. */
function planOf({ plannedFilingDate, plannedPaymentDate, ...given }: Given): PlannedReturn {
  const { totalTax, ...request } = givenRequest({ paidWithRequest: "2000", ...given });
  if (totalTax === undefined) throw new RangeError("no estimate");
  const date = (written: string | undefined) => (written === undefined ? undefined : day(written));
  return plannedReturn(
    {
      ...request,
      totalTax,
      plannedFilingDate: date(plannedFilingDate),
      plannedPaymentDate: date(plannedPaymentDate),
      assumedRate: undefined,
    },
    rulebook
  );
}

/** Paid on time, later payments, filing, and the last date. */
function shown(given: Given): unknown[] {
  const { paidOnTime, payments, filedOn, through, validExtension } = planOf(given);
  const later = payments.map(({ date, amount }) => `${written(date)} ${amount.toString()}`);
  return [paidOnTime.toString(), later, written(filedOn), written(through), validExtension];
}

const made = { requestedOn: "2026-04-10" };
const late = { requestedOn: "2026-04-20" };

// 26 U.S.C. 6151(a): the tax is due on the regular due date; Form 4868, line 7: the amount paid with the request.
describe("the return as recorded and planned", () => {
  it.each([
    ["2026-04-10", {}, "17000", ["2026-10-15 3000"], "2026-10-15", true],
    ["2026-04-15", {}, "17000", ["2026-10-15 3000"], "2026-10-15", true],
    ["2026-06-01", made, "17000", ["2026-10-15 3000"], "2026-10-15", true],
    // Without a request nothing was paid with it.
    ["2026-04-16", {}, "15000", ["2026-04-16 5000"], "2026-04-16", false],
    // With a late request the payment came on its date.
    ["2026-06-01", late, "15000", ["2026-04-20 2000", "2026-06-01 3000"], "2026-06-01", false],
    ["2026-09-02", { filedOn: "2026-09-01" }, "15000", ["2026-09-01 5000"], "2026-09-01", false],
  ] as const)("on %s with %j", (asOf, record, onTime, later, filedOn, validExtension) => {
    expect(shown({ asOf, record })).toEqual([onTime, later, filedOn, filedOn, validExtension]);
  });

  it("out of the country counts the payment with a request after April on its date", () => {
    const given = { filerType: "out of country", asOf: "2026-07-01" } as const;
    expect(shown({ ...given, record: { requestedOn: "2026-06-01" } })).toEqual([
      "15000",
      ["2026-06-01 2000", "2026-10-15 3000"],
      "2026-10-15",
      "2026-10-15",
      true,
    ]);
    expect(shown({ ...given, asOf: "2026-05-01" })[0]).toBe("15000");
  });

  it("has its payments in order, whatever was planned", () => {
    const given = { asOf: "2026-06-01", record: late, plannedPaymentDate: "2026-04-18" };
    expect(shown(given)[1]).toEqual(["2026-04-18 3000", "2026-04-20 2000"]);
  });

  it("ignores what happened after the as-of date", () => {
    const later = {
      ...made,
      confirmedOn: "2026-04-12",
      filedOn: "2026-06-02",
      paidOn: "2026-06-02",
    };
    expect(shown({ asOf: "2026-06-01", record: later })).toEqual(
      shown({ asOf: "2026-06-01", record: made })
    );
  });

  it("has no balance where the payments cover the tax, and then no charges", () => {
    const plan = planOf({ asOf: "2026-06-01", record: made, payments: "18000" });
    expect([plan.balance.toString(), plan.payments]).toEqual(["0", []]);
    expect(charges(plan, rulebook).total.toString()).toBe("0");
  });
});
