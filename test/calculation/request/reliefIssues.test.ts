import { describe, expect, it } from "vitest";
import { reliefIssues } from "../../../src/calculation/request/reliefIssues";
import { rulebook } from "../../../src/rules/rulebook";
import { givenRequest, type GivenRequest } from "./givenRequest";

const amountOf = (given: GivenRequest): string | undefined =>
  reliefIssues(givenRequest(given), rulebook)[0]?.amount?.toString();

const requested = { requestedOn: "2026-04-10" };
const extended = { ...requested, confirmedOn: "2026-04-10" };

// Section 6651(a)(1), (a)(2): a penalty from the day after the due date; Regulations section 301.6651-1(c)(3): 18,000 of 20,000.
describe("the reminder of relief for a clean history", () => {
  it.each([
    ["on the due date", { paidWithRequest: "0", asOf: "2026-04-15" }, undefined],
    ["the day after, not requested", { paidWithRequest: "0", asOf: "2026-04-16" }, "5000"],
    ["requested, 90% paid", { paidWithRequest: "3000", asOf: "2026-10-15" }, undefined],
    [
      "requested, 90% paid, extended date missed",
      { paidWithRequest: "3000", asOf: "2026-10-16" },
      "2000",
    ],
    [
      "requested, less than 90% paid",
      { paidWithRequest: "2999.99", asOf: "2026-04-16" },
      "2000.01",
    ],
    ["requested, all paid, extended date missed", { asOf: "2026-10-16" }, undefined],
    ["a refund", { payments: "25000", asOf: "2026-10-16" }, undefined],
    ["no estimate", { totalTax: null, asOf: "2026-10-16" }, undefined],
  ] as [string, GivenRequest, string | undefined][])("%s", (what, given, amount) => {
    const record = what.startsWith("requested") ? extended : {};
    expect(amountOf({ record, ...given })).toBe(amount);
  });

  it("counts the payment of a late request as unpaid on the due date", () => {
    const late = { requestedOn: "2026-04-16" };
    expect(amountOf({ record: late, asOf: "2026-04-16" })).toBe("5000");
    expect(amountOf({ record: requested, asOf: "2026-04-16" })).toBeUndefined();
  });

  // Section 6651 and Regulations section 1.6081-5(a): out of the country the return and the penalty count from June 15.
  it("waits for June 15 out of the country", () => {
    const given = { filerType: "out of country", paidWithRequest: "0" } as const;
    expect(amountOf({ ...given, asOf: "2026-06-15" })).toBeUndefined();
    expect(amountOf({ ...given, asOf: "2026-06-16" })).toBe("5000");
  });
});
