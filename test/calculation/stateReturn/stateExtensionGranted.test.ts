import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  stateExtensionGranted,
  type StateExtensionGranted,
} from "../../../src/calculation/stateReturn/stateExtensionGranted";
import type { StateExtension } from "../../../src/rules/stateTable";
import { rulebook } from "../../../src/rules/rulebook";
import { RUNS } from "../arbitrary";
import { usd } from "../given";

function ruleOf(state: string): StateExtension {
  const rule = rulebook.stateExtensions.rows.find((row) => row.state === state);
  if (!rule) throw new RangeError(`no rule of ${state}`);
  return rule;
}

/** The situation of a case: `f` the federal extension, `o` the state's own request, and the fraction paid. */
function outcome(rule: StateExtension, given: string, percentPaid?: string): StateExtensionGranted {
  return stateExtensionGranted(rule, {
    federalExtension: given.includes("f"),
    stateRequest: given.includes("o"),
    percentPaid: percentPaid === undefined ? undefined : usd(percentPaid),
  });
}

describe("a state's extension", () => {
  it.each([
    // Alabama, filing information: automatic, no condition on payment
    ["AL", "", undefined, true],
    // Massachusetts, extensions: 80% paid by the due date
    ["MA", "", "0.8", true],
    ["MA", "", "0.79", false],
    ["MA", "fo", "0.79", false],
    // Iowa, expanded instructions 2023: 90%
    ["IA", "", "0.9", true],
    ["IA", "", "0.8999", false],
    // Hawaii, updates for tax year 2023: all of the estimate
    ["HI", "", "1", true],
    ["HI", "", "0.99", false],
    // Idaho, Form 51: 80%
    ["ID", "", "0.8", true],
    ["ID", "", "0.79", false],
    // Arkansas, extensions: with the federal one, or by its own form
    ["AR", "f", undefined, true],
    ["AR", "o", undefined, true],
    ["AR", "", undefined, false],
    // NJ-630: with the federal one where 80% is paid, else by its own form
    ["NJ", "f", "0.8", true],
    ["NJ", "f", "0.79", false],
    ["NJ", "o", "0", true],
    ["NJ", "", "1", false],
    // IT-370: the federal one is not taken
    ["NY", "f", "1", false],
    ["NY", "o", undefined, true],
    ["NY", "fo", "0", true],
    ["NY", "", undefined, false],
    // no broad income tax
    ["TX", "fo", "1", false],
  ])("of %s with %j and %s paid is granted: %s", (state, given, percentPaid, expected) => {
    expect(outcome(ruleOf(state), given, percentPaid)).toBe(expected ? "granted" : "not granted");
  });

  // the states' texts, listed with the dates in test/fixtures/published: the federal request is taken where no tax is due
  it.each(["CT", "DC", "DE", "MD", "MO", "OK", "RI", "SC"])(
    "of %s with the federal request alone is granted only if all tax is paid",
    (code) => {
      expect(outcome(ruleOf(code), "f", "1")).toBe("granted");
      expect(outcome(ruleOf(code), "f", "0.99")).toBe("not granted");
    }
  );

  // NJ-630 and the Connecticut and Massachusetts texts need a percent of the tax only in these situations.
  it.each([
    ["MA", ""],
    ["MA", "fo"],
    ["CT", "f"],
    ["NJ", "f"],
  ])("of %s with %j depends on the percent paid", (state, given) => {
    expect(outcome(ruleOf(state), given)).toBe("percent paid unknown");
  });

  it.each([
    ["CT", "", "not granted"],
    ["CT", "o", "granted"],
    ["CT", "fo", "granted"],
  ])("of %s with %j does not depend on the percent paid: %s", (state, given, expected) => {
    expect(outcome(ruleOf(state), given)).toBe(expected);
  });

  it("does not depend on the percent paid if the rule names none", () => {
    expect(outcome({ ...ruleOf("MA"), percentPaid: undefined }, "")).toBe("granted");
  });
});

describe("whatever the state", () => {
  const rows = fc.constantFrom(...rulebook.stateExtensions.rows);
  const shares = fc.integer({ min: 0, max: 120 }).map((percent) => usd(percent).div(100));

  it("a larger payment or one more request never takes the extension away", () => {
    fc.assert(
      fc.property(rows, fc.boolean(), fc.boolean(), shares, shares, (rule, f, o, one, more) => {
        const now = { federalExtension: f, stateRequest: o, percentPaid: one };
        const is = stateExtensionGranted(rule, now);
        for (const better of [
          { ...now, percentPaid: one.plus(more) },
          { ...now, federalExtension: true },
          { ...now, stateRequest: true },
        ])
          if (is === "granted") expect(stateExtensionGranted(rule, better)).toBe("granted");
      }),
      RUNS
    );
  });

  it("full payment and both requests grant it, unless there is no return", () => {
    for (const rule of rulebook.stateExtensions.rows)
      expect(outcome(rule, "fo", "1")).toBe(rule.grant === "no return" ? "not granted" : "granted");
  });

  it("no payment and no request grant it only if it is automatic", () => {
    for (const rule of rulebook.stateExtensions.rows)
      expect(outcome(rule, "", "0")).toBe(rule.grant === "automatic" ? "granted" : "not granted");
  });
});
