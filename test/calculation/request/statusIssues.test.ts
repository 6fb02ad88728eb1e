import { describe, expect, it } from "vitest";
import { dateText } from "../given";
import { statusIssues } from "../../../src/calculation/request/statusIssues";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { givenRequest, type GivenRequest } from "./givenRequest";

const found = (given: GivenRequest) =>
  statusIssues(givenRequest(given), rulebook).map(({ check, date }) => [check, dateText(date)]);

const asked = { requestedOn: "2026-04-14" };
const rejected = { ...asked, rejectedOn: "2026-04-15" };
const early = { requestedOn: "2026-04-11", rejectedOn: "2026-04-12" };
const old = { requestedOn: "2026-04-01", rejectedOn: "2026-04-01" };

// 26 CFR 1.6081-4(b): asked by the due date; Pub. 1345: a rejected request resent within five calendar days after it; the trade
// counts from the rejection.
describe("where a request stands", () => {
  it.each([
    ["not asked, the last day", "2026-04-15", {}, []],
    ["not asked, the day after", "2026-04-16", {}, [["not requested on time", "2026-04-15"]]],
    [
      "asked a day late",
      "2026-04-16",
      { requestedOn: "2026-04-16" },
      [["requested late", "2026-04-15"]],
    ],
    ["asked without proof", "2026-04-14", asked, [["no proof", "2026-04-14"]]],
    ["asked without proof, in summer", "2026-08-01", asked, [["no proof", "2026-04-14"]]],
    ["confirmed", "2026-08-01", { ...asked, confirmedOn: "2026-04-14" }, []],
    [
      "rejected on the last day",
      "2026-04-15",
      rejected,
      [["perfection period open", "2026-04-20"]],
    ],
    ["rejected, the fifth day", "2026-04-20", rejected, [["perfection period open", "2026-04-20"]]],
    ["rejected, the sixth day", "2026-04-21", rejected, [["perfection period over", "2026-04-20"]]],
    [
      "rejected before it, the fifth day",
      "2026-04-17",
      early,
      [["perfection period open", "2026-04-17"]],
    ],
    [
      "rejected before it, the sixth day",
      "2026-04-18",
      early,
      [["perfection period over", "2026-04-17"]],
    ],
    [
      "rejected long before it, on it",
      "2026-04-15",
      old,
      [["perfection period open", "2026-04-15"]],
    ],
    [
      "rejected long before it, a day on",
      "2026-04-16",
      old,
      [["perfection period over", "2026-04-15"]],
    ],
    ["sent again and accepted", "2026-04-21", { ...rejected, confirmedOn: "2026-04-18" }, []],
    ["sent again on the fifth day", "2026-04-21", { ...rejected, confirmedOn: "2026-04-20" }, []],
    [
      "sent again on the sixth day",
      "2026-04-21",
      { ...rejected, confirmedOn: "2026-04-21" },
      [["perfection period over", "2026-04-20"]],
    ],
    [
      "sent again on the sixth day, in summer",
      "2026-08-01",
      { ...early, confirmedOn: "2026-04-18" },
      [["perfection period over", "2026-04-17"]],
    ],
    [
      "not filed by the extended date",
      "2026-10-16",
      asked,
      [["extended date missed", "2026-10-15"]],
    ],
    ["on the extended date", "2026-10-15", { ...asked, confirmedOn: "2026-04-14" }, []],
  ])("%s", (_what, asOf, record, issues) => {
    expect(found({ asOf, record })).toEqual(issues);
  });

  it("follows the client's own dates", () => {
    expect(found({ filerType: "out of country", asOf: "2026-06-15" })).toEqual([]);
    expect(found({ filerType: "out of country", asOf: "2026-06-16" })).toEqual([
      ["not requested on time", "2026-06-15"],
    ]);
  });

  it("is not told if the perfection period is not in the table", () => {
    const record = { requestedOn: "2022-04-14", rejectedOn: "2022-04-15" };
    expect(() => found({ taxYear: 2021, asOf: "2022-04-19", record })).toThrow(NotInTableError);
  });
});
