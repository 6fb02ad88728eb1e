import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stateIssues } from "../../../src/calculation/request/stateIssues";
import { STATES } from "../../../src/calculation/state";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/state-extension-dates.json";
import { RUNS } from "../arbitrary";
import { givenRequest, type GivenRequest } from "./givenRequest";

/** The issues with what they are about. */
const found = (given: GivenRequest) =>
  stateIssues(givenRequest(given), rulebook).map(
    ({ check, details }) => `${check} · ${String(details)}`
  );
const checksOf = (given: GivenRequest) =>
  stateIssues(givenRequest(given), rulebook).map(({ check }) => check);

describe("what hangs on the state", () => {
  it.each(published.cases)("of $case: whether the federal request is enough", (one) => {
    const asks = checksOf({ state: one.inputs.state }).includes("state asks for its own request");
    const isEnough = one.expected.ways.some(([by, percent]) => by !== "state request" && !percent);
    expect(asks).toBe(!isEnough);
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

  // 280-RICR-20-55-2.5 and 2.6.
  it("names each condition that grants the extension", () => {
    expect(found({ state: "RI" })[0]).toMatch(
      /: With a federal extension and no payment.*; RI-4868/
    );
  });

  it.each([
    ["an undated text", "GA", 2025, true],
    ["a text of the year before", "CA", 2025, true],
    ["a text of the year itself", "IL", 2024, false],
    ["a text of a later year", "IL", 2023, false],
    ["dates of the year itself, a condition of an earlier one", "SC", 2025, true],
    ["memory", "MS", 2025, true],
    ["a report of the year itself", "MD", 2025, true],
    ["reports that disagree", "DE", 2024, true],
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
    const rows = rulebook.stateExtensions.rows.map((row) => ({ ...row, fromTaxYear: 2024 }));
    const rules = { ...rulebook, stateExtensions: { ...rulebook.stateExtensions, rows } };
    const checks = (taxYear: number) =>
      stateIssues(
        givenRequest({ state: "IL", taxYear, asOf: `${String(taxYear + 1)}-04-10` }),
        rules
      ).map(({ check }) => check);
    expect(checks(2023)).toEqual(["state rule unverified"]);
    expect(checks(2024)).toEqual([]);
  });

  it("is nothing for a fiscal year, because the state table covers calendar years", () => {
    const fiscal = { taxYear: "2025-06-30", asOf: "2025-10-01" };
    expect(checksOf({ ...fiscal, state: "NY" })).toEqual([]);
  });

  it("is nothing without a state, in a foreign country or where there is no return", () => {
    for (const state of [undefined, "foreign", "TX", "WA", "NH"])
      expect(checksOf({ state })).toEqual([]);
  });

  it("names no other state than the client's", () => {
    fc.assert(
      fc.property(fc.constantFrom(...STATES), (state) => {
        const name = rulebook.stateExtensions.rows.find((row) => row.state === state)?.name;
        for (const { details } of stateIssues(givenRequest({ state }), rulebook))
          expect(details?.split(":")[0]).toBe(name);
      }),
      RUNS
    );
  });
});
