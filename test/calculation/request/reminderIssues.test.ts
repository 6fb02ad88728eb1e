import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reminderIssues } from "../../../src/calculation/request/reminderIssues";
import { STATES } from "../../../src/calculation/state";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/state-extension-dates.json";
import { RUNS } from "../arbitrary";
import { givenRequest, type GivenRequest } from "./givenRequest";

/** The issues with what they are about, the day and the dollars, as text. */
const found = (given: GivenRequest) =>
  reminderIssues(givenRequest(given), rulebook).map(
    ({ check, details: about, date: day, amount }) =>
      [check, about, day, amount?.toString()].filter((part) => part !== undefined).join(" · ")
  );
const checksOf = (given: GivenRequest) =>
  reminderIssues(givenRequest(given), rulebook).map(({ check }) => check);

describe("what hangs on the state", () => {
  const alone = ["automatic", "with the federal extension"];

  it.each(published.cases)("of $case: whether the federal request is enough", (one) => {
    const asks = checksOf({ state: one.inputs.state }).includes("state asks for its own request");
    expect(asks).toBe(!alone.includes(one.expected.grant));
  });

  // IT-370 instructions: the federal request is not taken.
  it("names the state and its condition", () => {
    expect(found({ state: "NY" })).toEqual([
      expect.stringMatching(
        /^state asks for its own request · New York: File the request by the due date/
      ),
      "state rule unverified · New York",
    ]);
  });

  it.each([
    ["an undated text", "GA", 2025, true],
    ["a text of the year before", "CA", 2025, true],
    ["a text of the year itself", "CA", 2024, false],
    ["a text of a later year", "CA", 2023, false],
    ["memory", "KS", 2025, true],
    ["reports that disagree, of the year itself", "DE", 2024, true],
    ["no return at all", "FL", 2025, false],
    ["no return, read for an earlier year", "FL", 2026, false],
    // New Hampshire's tax on interest and dividends ended with tax year 2024
    ["no return, of a year before the first it is for", "NH", 2023, true],
    ["no return, of the last year before that", "NH", 2024, true],
    ["no return, of the first year it is for", "NH", 2025, false],
    ["no rule", "PR", 2025, false],
  ])("warns of %s", (_what, state, taxYear, isUnsure) => {
    const asOf = `${String(taxYear + 1)}-04-10`;
    expect(checksOf({ state, taxYear, asOf }).includes("state rule unverified")).toBe(isUnsure);
  });

  it("warns of a year before the first that a rule is for, whatever the state grants", () => {
    expect(found({ state: "NH", taxYear: 2024, asOf: "2025-04-10" })).toEqual([
      "state rule unverified · New Hampshire",
    ]);
    const rows = rulebook.stateExtensions.rows.map((row) => ({
      ...row,
      fromTaxYear: 2025,
      sourceTaxYear: 2025,
    }));
    const rules = { ...rulebook, stateExtensions: { ...rulebook.stateExtensions, rows } };
    const checks = (taxYear: number) =>
      reminderIssues(
        givenRequest({ state: "CA", taxYear, asOf: `${String(taxYear + 1)}-04-10` }),
        rules
      ).map(({ check }) => check);
    expect(checks(2024)).toContain("state rule unverified");
    expect(checks(2025)).not.toContain("state rule unverified");
  });

  it("warns of memory even where a tax year is noted beside it", () => {
    const rows = rulebook.stateExtensions.rows.map((row) => ({ ...row, sourceTaxYear: 2025 }));
    const rules = { ...rulebook, stateExtensions: { ...rulebook.stateExtensions, rows } };
    const checks = (code: string) =>
      reminderIssues(givenRequest({ state: code }), rules).map(({ check }) => check);
    expect(checks("KS")).toEqual(["state rule unverified"]);
    expect(checks("OH")).toEqual([]);
  });

  it("is nothing for a fiscal year, because the state table covers calendar years", () => {
    const fiscal = { taxYear: "2025-06-30", asOf: "2025-10-01" };
    expect(checksOf({ ...fiscal, state: "NY" })).toEqual([]);
  });

  it("is nothing without a state, in a foreign country or where there is no return", () => {
    for (const state of [undefined, "foreign", "TX", "WA", "NH"])
      expect(checksOf({ state })).toEqual([]);
  });
});

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

describe("reminders", () => {
  it("name no other state than the client's", () => {
    fc.assert(
      fc.property(fc.constantFrom(...STATES), (state) => {
        const name = rulebook.stateExtensions.rows.find((row) => row.state === state)?.name;
        for (const { check, details: about } of reminderIssues(givenRequest({ state }), rulebook))
          if (check.startsWith("state")) expect(about?.split(":")[0]).toBe(name);
      }),
      RUNS
    );
  });
});
