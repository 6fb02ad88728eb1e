import { describe, expect, it } from "vitest";
import { stateRuleReliability } from "../../../src/calculation/stateReturn/stateRuleReliability";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";

const ruleOf = (state: string) => {
  const rule = rulebook.stateExtensions.rows.find((row) => row.state === state);
  if (!rule) throw new RangeError(`no rule of ${state}`);
  return rule;
};

describe("how far a state's rule can be relied on", () => {
  // tax years and doubts of the texts: test/fixtures/published/state-extension-dates.json
  it.each([
    ["CA", 2023, "current", undefined],
    ["CA", 2024, "current", undefined],
    ["CA", 2025, "older", undefined],
    ["NY", 2025, "undated", undefined],
    ["KS", 2025, "undated", "the rule is unverified"],
    ["DE", 2025, "older", "reports of the rule disagree"],
  ] as const)("%s for %d: %s, %s", (state, year, age, doubt) => {
    expect(stateRuleReliability(calendarTaxYear(year), ruleOf(state))).toEqual({ age, doubt });
  });

  it("is a doubt also for a current text, if its sources disagree", () => {
    const rule = { ...ruleOf("CA"), unsettled: "reports of the rule disagree" };
    expect(stateRuleReliability(calendarTaxYear(2024), rule)).toEqual({
      age: "current",
      doubt: "reports of the rule disagree",
    });
  });
});
