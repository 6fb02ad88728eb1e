import { describe, expect, it } from "vitest";
import { extensionInPlan } from "../../../src/calculation/season/extensionInPlan";
import { rulebook } from "../../../src/rules/rulebook";
import { givenRequest, type GivenRequest } from "../request/givenRequest";

const inPlan = (given: GivenRequest): boolean => {
  const { dates, record, asOf } = givenRequest(given);
  return extensionInPlan(dates, record, asOf, rulebook);
};

const asked = { requestedOn: "2026-04-14" };
const late = { requestedOn: "2026-04-16" };
const rejected = { ...asked, rejectedOn: "2026-04-15" };
const sentAgain = (confirmedOn: string) => ({ ...rejected, confirmedOn });
const again = sentAgain("2026-04-17");

// 26 CFR 1.6081-4(b): asked by the due date. That a client not yet asked for is planned with the extension: common practice, no source.
describe("the extension is reckoned with", () => {
  it.each([
    ["while it can be asked for", "2026-04-15", {}],
    ["where it was asked for in time", "2026-07-01", asked],
    ["on the extended date", "2026-10-15", asked],
    ["after the extended date was missed: it was had all the same", "2026-10-16", asked],
    ["while a rejected request can be sent again", "2026-04-20", rejected],
    ["where a rejected request was accepted later", "2026-07-01", again],
    ["where it was sent again on the last day", "2026-07-01", sentAgain("2026-04-20")],
    [
      "while one rejected early can be sent again",
      "2026-04-17",
      { requestedOn: "2026-04-11", rejectedOn: "2026-04-12" },
    ],
    ["where the return was filed later", "2026-07-01", { ...asked, filedOn: "2026-06-20" }],
    [
      "where the return is in after a rejected request was accepted later",
      "2026-07-01",
      { ...again, filedOn: "2026-06-20" },
    ],
  ])("%s", (_what, asOf, record) => {
    expect(inPlan({ asOf, record })).toBe(true);
  });

  it.each([
    ["where nothing was asked for in time", "2026-04-16", {}],
    ["where it was asked for late", "2026-04-16", late],
    ["where a rejected request was not sent again in time", "2026-04-21", rejected],
    ["where it was sent again a day late", "2026-07-01", sentAgain("2026-04-21")],
    [
      "where it was sent again a day late and the return is in",
      "2026-07-01",
      { ...sentAgain("2026-04-21"), filedOn: "2026-06-20" },
    ],
    [
      "where one rejected early was not sent again in time",
      "2026-04-18",
      { requestedOn: "2026-04-11", rejectedOn: "2026-04-12" },
    ],
    ["where the return was filed without it", "2026-07-01", { filedOn: "2026-06-20" }],
    [
      "where the return was filed after a late request",
      "2026-07-01",
      { ...late, filedOn: "2026-06-20" },
    ],
    // A filed return gets no extension any more: 26 CFR 1.6081-4(b)(1), the application is for time to file.
    ["where nothing was asked for and the return is in", "2026-04-10", { filedOn: "2026-04-09" }],
    [
      "where the return is in while a rejected request could be sent again",
      "2026-04-18",
      { ...rejected, filedOn: "2026-04-17" },
    ],
    ["where the request is noted for a later day", "2026-04-16", { requestedOn: "2026-04-17" }],
  ])("not %s", (_what, asOf, record) => {
    expect(inPlan({ asOf, record })).toBe(false);
  });

  it("until June for a taxpayer out of the country", () => {
    expect(inPlan({ filerType: "out of country", asOf: "2026-06-15" })).toBe(true);
    expect(inPlan({ filerType: "out of country", asOf: "2026-06-16" })).toBe(false);
  });
});
