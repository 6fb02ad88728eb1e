import { describe, expect, it } from "vitest";
import { dateText } from "../given";
import { reminderIssues } from "../../../src/calculation/request/reminderIssues";
import { rulebook } from "../../../src/rules/rulebook";
import { givenRequest, type GivenRequest } from "./givenRequest";

/** The issues with what they are about, the day and the dollars, as text. */
const found = (given: GivenRequest) =>
  reminderIssues(givenRequest(given), rulebook).map(({ check, details: about, date, amount }) =>
    [check, about, dateText(date), amount?.toString()]
      .filter((part) => part !== undefined)
      .join(" · ")
  );

// 26 U.S.C. 7508A(a).
describe("a disaster postponement", () => {
  it.each([
    ["reaches April", ["2026-01-22", "2026-06-08"], ["postponement moves dates · 2026-06-08"]],
    [
      "begins on the due date",
      ["2026-04-15", "2026-06-08"],
      ["postponement moves dates · 2026-06-08"],
    ],
    ["begins a day after it", ["2026-04-16", "2026-06-08"], []],
    [
      "reaches October alone",
      ["2026-10-01", "2026-11-02"],
      ["postponement moves dates · 2026-11-02"],
    ],
    ["ends on the due date", ["2026-01-22", "2026-04-15"], []],
  ] as const)("that %s", (_what, postponement, issues) => {
    expect(found({ postponement })).toEqual(issues);
  });

  it("shows the first date moved: out of the country the payment, where only April is reached", () => {
    const postponement = ["2026-04-01", "2026-05-15"] as const;
    expect(found({ postponement, filerType: "out of country" })).toEqual([
      "postponement moves dates · 2026-05-15",
    ]);
  });
});

// 26 U.S.C. 6654(c)(2): April 15 of the new year; the extension does not move it.
describe("the new year's first estimate", () => {
  it.each([
    ["on the last day", { asOf: "2026-04-15" }, ["first installment due · 2026-04-15 · 2500"]],
    ["the day after", { asOf: "2026-04-16" }, []],
    ["not planned", { firstInstallment: null }, ["first installment due · 2026-04-15"]],
    ["of a cent", { firstInstallment: "0.01" }, ["first installment due · 2026-04-15 · 0.01"]],
    ["of nothing", { firstInstallment: "0" }, []],
    [
      "abroad, where the return is due in June",
      { filerType: "out of country" },
      ["first installment due · 2026-04-15 · 2500"],
    ],
    // 26 U.S.C. 6654(j)(2): June 15.
    [
      "of a nonresident, after April 15",
      { filerType: "nonresident", asOf: "2026-06-15" },
      ["first installment due · 2026-06-15 · 2500"],
    ],
    ["of a nonresident, after June 15", { filerType: "nonresident", asOf: "2026-06-16" }, []],
    [
      "of a fiscal year",
      { taxYear: "2025-06-30", asOf: "2025-10-01" },
      ["first installment due · 2025-10-15 · 2500"],
    ],
    ["of a year whose dates are not held", { taxYear: 2027, asOf: "2028-04-01" }, []],
    [
      "of the last year whose dates are held",
      { taxYear: 2026, asOf: "2027-04-01" },
      ["first installment due · 2027-04-15 · 2500"],
    ],
  ] as const)("%s", (_what, given, issues) => {
    expect(found({ firstInstallment: "2500", ...given })).toEqual(issues);
  });

  it("moves with a disaster postponement", () => {
    const postponement = ["2026-01-22", "2026-06-08"] as const;
    expect(found({ firstInstallment: "2500", postponement, asOf: "2026-06-08" })).toEqual([
      "postponement moves dates · 2026-06-08",
      "first installment due · 2026-06-08 · 2500",
    ]);
  });
});
