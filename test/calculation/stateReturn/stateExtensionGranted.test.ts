import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stateExtensionGranted } from "../../../src/calculation/stateReturn/stateExtensionGranted";
import { InputError } from "../../../src/inputError";
import type { StateExtension } from "../../../src/rules/stateTable";
import { rulebook } from "../../../src/rules/rulebook";
import { RUNS } from "../arbitrary";
import { usd } from "../given";

function ruleOf(state: string): StateExtension {
  const rule = rulebook.stateExtensions.rows.find((row) => row.state === state);
  if (!rule) throw new RangeError(`no rule of ${state}`);
  return rule;
}

/** What a case gives: `f` the federal extension, `o` the state's own request, and the share paid. */
function granted(rule: StateExtension, given: string, percentPaid?: string): boolean {
  return stateExtensionGranted(rule, {
    federalExtension: given.includes("f"),
    stateRequest: given.includes("o"),
    percentPaid: percentPaid === undefined ? undefined : usd(percentPaid),
  });
}

describe("a state grants more time", () => {
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
  ])("%s with %j and %s paid: %s", (state, given, percentPaid, expected) => {
    expect(granted(ruleOf(state), given, percentPaid)).toBe(expected);
  });

  // the states' texts, listed with the dates in test/fixtures/published: the federal request is taken where no tax is due
  it.each(["CT", "DC", "DE", "MD", "MO", "OK", "RI", "SC"])(
    "%s with the federal request alone only where all is paid",
    (code) => {
      expect(granted(ruleOf(code), "f", "1")).toBe(true);
      expect(granted(ruleOf(code), "f", "0.99")).toBe(false);
    }
  );

  it.each([
    [
      "MA",
      "",
      "paidShare: is empty; Massachusetts grants the extension only when 80% of its tax is paid by the due date, give the share paid",
    ],
    [
      "CT",
      "f",
      "paidShare: is empty; Connecticut grants the extension only when 100% of its tax is paid by the due date, give the share paid",
    ],
  ])("%s with %j asks for the share paid", (state, given, sentence) => {
    expect(() => granted(ruleOf(state), given)).toThrow(
      new InputError("percentPaid", sentence.slice("paidShare: ".length))
    );
  });

  it.each([
    ["CT", ""],
    ["CT", "o"],
    ["CT", "fo"],
  ])("%s with %j does not ask for the share paid", (state, given) => {
    expect(granted(ruleOf(state), given)).toBe(given.includes("o"));
  });

  it("without asking for a share where the rule names none", () => {
    expect(granted({ ...ruleOf("MA"), percentPaid: undefined }, "")).toBe(true);
  });
});

describe("whatever the state", () => {
  const rows = fc.constantFrom(...rulebook.stateExtensions.rows);
  const shares = fc.integer({ min: 0, max: 120 }).map((percent) => usd(percent).div(100));

  it("more paid, asked or extended never takes the extension away", () => {
    fc.assert(
      fc.property(rows, fc.boolean(), fc.boolean(), shares, shares, (rule, f, o, one, more) => {
        const now = { federalExtension: f, stateRequest: o, percentPaid: one };
        const is = stateExtensionGranted(rule, now);
        for (const better of [
          { ...now, percentPaid: one.plus(more) },
          { ...now, federalExtension: true },
          { ...now, stateRequest: true },
        ])
          if (is) expect(stateExtensionGranted(rule, better)).toBe(true);
      }),
      RUNS
    );
  });

  it("all paid, asked and extended grants it, but where there is no return", () => {
    for (const rule of rulebook.stateExtensions.rows)
      expect(granted(rule, "fo", "1")).toBe(rule.grant !== "no return");
  });

  it("nothing paid, asked or extended grants it only where it is automatic", () => {
    for (const rule of rulebook.stateExtensions.rows)
      expect(granted(rule, "", "0")).toBe(rule.grant === "automatic");
  });
});
