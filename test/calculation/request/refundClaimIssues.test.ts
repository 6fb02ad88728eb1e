import { describe, expect, it } from "vitest";
import { dateText } from "../given";
import { refundClaimIssues } from "../../../src/calculation/request/refundClaimIssues";
import { rulebook } from "../../../src/rules/rulebook";
import { givenRequest, type GivenRequest } from "./givenRequest";

const found = (given: GivenRequest) =>
  refundClaimIssues(givenRequest({ payments: "21000", ...given }), rulebook).map(
    ({ check, date, amount }) => `${check} ${String(dateText(date))} ${String(amount)}`
  );
const extended = { requestedOn: "2026-04-10", confirmedOn: "2026-04-10" };

// 26 U.S.C. 6511(b)(2)(A), 6513(b)(1): three years from April 15, 2026, or from the end of the extension.
describe("the issue with a refund that must be claimed", () => {
  it.each([
    ["2028-04-14", {}, []],
    ["2028-04-15", {}, ["refund claim near 2029-04-15 1000"]],
    ["2029-04-15", {}, ["refund claim near 2029-04-15 1000"]],
    ["2029-04-16", {}, ["refund claim passed 2029-04-15 1000"]],
    ["2028-10-14", extended, []],
    ["2028-10-15", extended, ["refund claim near 2029-10-15 1000"]],
    ["2029-10-16", extended, ["refund claim passed 2029-10-15 1000"]],
    // a late request gives no extension
    ["2029-04-16", { requestedOn: "2026-04-16" }, ["refund claim passed 2029-04-15 1000"]],
  ])("on %s with the record %j is %j", (asOf, record, issues) => {
    expect(found({ asOf, record })).toEqual(issues);
  });

  it.each([[{ payments: "20000" }], [{ totalTax: null }]])("is none with %j", (given) => {
    expect(found({ asOf: "2029-04-16", ...given })).toEqual([]);
  });

  // 26 U.S.C. 7508A(f)
  it("counts the client's disaster postponement", () => {
    expect(found({ asOf: "2029-04-16", postponement: ["2026-03-01", "2026-09-01"] })).toEqual([
      "refund claim near 2029-09-01 1000",
    ]);
  });
});
