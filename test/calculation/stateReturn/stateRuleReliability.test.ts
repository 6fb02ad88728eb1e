import { describe, expect, it } from "vitest";
import { extensionParts } from "../../../src/calculation/stateReturn/extensionParts";
import {
  stateRuleReliability,
  type RuleReliability,
} from "../../../src/calculation/stateReturn/stateRuleReliability";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/state-extension-dates.json";
import { ruleOf } from "./givenState";

const ofDates = (state: string, year: number): RuleReliability =>
  stateRuleReliability(calendarTaxYear(year), ruleOf(state));
const isInDoubt = (state: string, year: number): boolean =>
  extensionParts(calendarTaxYear(year), ruleOf(state)).some(
    (part) => stateRuleReliability(calendarTaxYear(year), part).doubt !== undefined
  );

describe("how far a part of a state's rule can be relied on", () => {
  // tax years of the texts: test/fixtures/published/state-extension-dates.json
  it.each([
    ["CA", 2023, "current", true],
    ["CA", 2024, "current", true],
    ["CA", 2025, "older", false],
    ["IA", 2023, "current", true],
    ["IA", 2024, "older", false],
    ["NY", 2025, "undated", false],
    ["SC", 2025, "current", true],
    ["SC", 2026, "older", false],
    // a report for the tax year itself
    ["MD", 2025, "current", false],
  ] as const)("the dates of %s for %d: %s, confirmed: %s", (state, year, age, isConfirmed) => {
    expect(ofDates(state, year)).toEqual({ age, doubt: undefined, isConfirmed });
  });

  // Mississippi: no text says that a federal extension is enough. Memory is a doubt whatever tax year is noted beside it.
  it("is a doubt for a term from memory", () => {
    const [, federal] = extensionParts(calendarTaxYear(2025), ruleOf("MS"));
    if (!federal) throw new RangeError("no term of Mississippi");
    for (const part of [federal, { ...federal, sourceTaxYear: 2025 }])
      expect(stateRuleReliability(calendarTaxYear(2025), part)).toMatchObject({
        doubt: "the rule is unverified",
        isConfirmed: false,
      });
  });

  it("is a doubt also for a current official text, if its sources disagree", () => {
    const part = { ...ruleOf("CA"), unsettled: { because: "its sources disagree" } };
    expect(stateRuleReliability(calendarTaxYear(2024), part)).toEqual({
      age: "current",
      doubt: "its sources disagree",
      isConfirmed: false,
    });
  });

  it("is a doubt only from the tax year that the doubt names", () => {
    const part = { ...ruleOf("CA"), unsettled: { fromTaxYear: 2024, because: "a bill" } };
    expect(stateRuleReliability(calendarTaxYear(2023), part).doubt).toBeUndefined();
    expect(stateRuleReliability(calendarTaxYear(2024), part).doubt).toBe("a bill");
  });
});

describe("the extensions in doubt", () => {
  it.each(published.cases)("$case", ({ inputs, expected }) => {
    const doubtFrom = { always: 2022, "from 2025": 2025 }[expected.inDoubt ?? ""] ?? 9999;
    for (const year of [2022, 2023, 2024, 2025, 2026])
      expect(isInDoubt(inputs.state, year)).toBe(year >= doubtFrom);
  });

  it("are those of three states for tax year 2025, and no dates are", () => {
    const states = rulebook.stateExtensions.rows.map(({ state }) => state);
    expect(states.filter((state) => isInDoubt(state, 2025)).toSorted()).toEqual(["DE", "ID", "MS"]);
    for (const state of states) expect(ofDates(state, 2025).doubt).toBeUndefined();
  });
});
