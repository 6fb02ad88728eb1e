import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dateText } from "../given";
import { moneyIssues } from "../../../src/calculation/request/moneyIssues";
import { rulebook } from "../../../src/rules/rulebook";
import { dollarsUpTo, RUNS } from "../arbitrary";
import { givenRequest, type GivenRequest } from "./givenRequest";

/** The issues with their dollars and day, as text. */
const found = (given: GivenRequest) =>
  moneyIssues(givenRequest(given), rulebook).map(({ check, amount, date }) =>
    [check, amount?.toString(), dateText(date)].filter((part) => part !== undefined).join(" ")
  );

// 26 CFR 301.6651-1(c)(3): 90% of 20,000 is 18,000; 26 U.S.C. 6601(a): interest from the payment due date on what is unpaid.
describe("issues with the amounts of a request", () => {
  it.each([
    ["2999.99", ["below 90% test 0.01 2026-04-15", "interest accrues 2000.01 2026-04-15"]],
    ["3000", ["interest accrues 2000 2026-04-15"]],
    ["4999.99", ["interest accrues 0.01 2026-04-15"]],
    ["5000", []],
    ["6000", []],
    ["0", ["below 90% test 3000 2026-04-15", "interest accrues 5000 2026-04-15"]],
  ])("with $%s of 5,000 paid are %j", (paidWithRequest, issues) => {
    expect(found({ paidWithRequest })).toEqual(issues);
  });

  it("round what is missing up to the cent: half a cent short is short", () => {
    // 90% of 20,000.05 is 18,000.045
    expect(found({ totalTax: "20000.05", paidWithRequest: "3000.04" })[0]).toBe(
      "below 90% test 0.01 2026-04-15"
    );
    expect(found({ totalTax: "20000.05", paidWithRequest: "3000.05" })[0]).toBe(
      "interest accrues 2000 2026-04-15"
    );
  });

  // 26 U.S.C. 6601(b)(1): being out of the country moves the return, not the payment.
  it("show the payment due date, which being out of the country does not move", () => {
    expect(found({ filerType: "out of country", paidWithRequest: "0" })[1]).toBe(
      "interest accrues 5000 2026-04-15"
    );
    expect(found({ filerType: "nonresident", paidWithRequest: "0" })[1]).toBe(
      "interest accrues 5000 2026-06-15"
    );
  });

  // 26 CFR 301.6651-1(c)(3): by the due date of the return without the extension, June 15 for a taxpayer out of the country.
  it.each([
    ["2026-04-15", "resident", "below 90% test 3000 2026-04-15"],
    ["2026-04-16", "resident", "90% test missed 3000 2026-04-15"],
    ["2026-04-15", "out of country", "below 90% test 3000 2026-06-15"],
    ["2026-06-15", "out of country", "below 90% test 3000 2026-06-15"],
    ["2026-06-16", "out of country", "90% test missed 3000 2026-06-15"],
  ] as const)("say on %s whether a %s can still meet the 90% test", (asOf, filerType, issue) => {
    expect(found({ asOf, filerType, paidWithRequest: "0" })[0]).toBe(issue);
  });

  it("count what was to be paid with a request only if it was made by the due date", () => {
    const plan = { paidWithRequest: "5000", asOf: "2026-04-16" };
    expect(found(plan)[0]).toBe("90% test missed 3000 2026-04-15");
    expect(found({ ...plan, record: { requestedOn: "2026-04-15" } })).toEqual([]);
    expect(found({ ...plan, record: { requestedOn: "2026-04-16" } })[0]).toBe(
      "90% test missed 3000 2026-04-15"
    );
  });

  it("are one where the estimate is blank, whatever else is given", () => {
    expect(
      found({ totalTax: null, payments: "1", paidWithRequest: "0", priorYearTax: "900" })
    ).toEqual(["estimate blank"]);
  });

  // Crocker v. Commissioner, 92 T.C. 899: an estimate without a fair attempt can void the extension.
  it.each([
    ["0", "900", ["zero estimate after tax last year 900"]],
    ["0", "0.01", ["zero estimate after tax last year 0.01"]],
    ["0", "0", ["zero estimate"]],
    ["0", undefined, ["zero estimate"]],
    [
      "0.01",
      "900",
      [
        "low estimate beside last year 900",
        "below 90% test 0.01 2026-04-15",
        "interest accrues 0.01 2026-04-15",
      ],
    ],
  ])("of an estimate of %s beside %s last year are %j", (totalTax, priorYearTax, issues) => {
    const prior = priorYearTax === undefined ? {} : { priorYearTax };
    expect(found({ totalTax, payments: "0", paidWithRequest: "0", ...prior })).toEqual(issues);
  });

  it.each([
    ["20000", []],
    ["20000.01", ["refund expected 0.01"]],
    ["25000", ["refund expected 5000"]],
  ])("of payments of %s on a tax of 20,000 are %j", (payments, issues) => {
    expect(found({ payments, paidWithRequest: "0" })).toEqual(issues);
  });

  it("do not count what goes with the request as a sign of a refund", () => {
    expect(found({ payments: "19999.99", paidWithRequest: "500" })).toEqual([]);
  });

  it("vanish when the dollars shown are paid, and not a cent before", () => {
    const dollars = dollarsUpTo(90_000).map(String);
    fc.assert(
      fc.property(dollars, dollars, (totalTax, payments) => {
        for (const check of ["below 90% test", "interest accrues"] as const) {
          const given = { totalTax, payments, paidWithRequest: "0" };
          const amountOf = (request: GivenRequest) =>
            moneyIssues(givenRequest(request), rulebook).find((one) => one.check === check)?.amount;
          const amount = amountOf(given);
          if (amount === undefined) continue;
          expect(amountOf({ ...given, paidWithRequest: String(amount) })).toBeUndefined();
          expect(
            amountOf({ ...given, paidWithRequest: String(amount.minus("0.01")) })
          ).toBeDefined();
        }
      }),
      RUNS
    );
  });
});
