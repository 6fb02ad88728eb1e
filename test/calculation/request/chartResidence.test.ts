import { describe, expect, it } from "vitest";
import { chartResidence } from "../../../src/calculation/request/chartResidence";
import type { MailingResidence } from "../../../src/calculation/request/mailingAddress";

// Form 4868, "Where To File a Paper Form 4868": a line for each state, one for a foreign country, one for foreign estates and trusts
// that file Form 1040-NR, and one for all other filers of Form 1040-NR.
describe("the line of the chart of addresses", () => {
  it.each([
    ["TX", "resident", "TX"],
    ["foreign", "resident", "foreign"],
    ["TX", "out of country", "foreign"],
    [undefined, "out of country", "foreign"],
    ["TX", "nonresident", "nonresident"],
    ["nonresident", "resident", "nonresident"],
    ["estate", "nonresident", "estate"],
    ["estate", "out of country", "estate"],
  ] as const)("for %s and %s is %s", (residence, filerType, line) => {
    expect(chartResidence(residence as MailingResidence | undefined, filerType)).toBe(line);
  });

  it("is not known for a resident of an unknown state", () => {
    expect(chartResidence(undefined, "resident")).toBeUndefined();
  });
});
