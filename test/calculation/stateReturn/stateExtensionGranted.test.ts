import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stateExtensionGranted } from "../../../src/calculation/stateReturn/stateExtensionGranted";
import type { StateTerm } from "../../../src/rules/stateTable";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/state-extension-dates.json";
import { RUNS } from "../arbitrary";
import { usd } from "../given";
import { ruleOf } from "./givenState";

/** The answer for a case: `f` the federal extension, `o` the state's own request, and the fraction paid. */
function outcome(
  { terms }: { readonly terms: readonly Pick<StateTerm, "by" | "percentPaid">[] },
  given: string,
  percentPaid?: string
): string {
  const granted = stateExtensionGranted(terms, {
    federalExtension: given.includes("f"),
    stateRequest: given.includes("o"),
    percentPaid: percentPaid === undefined ? undefined : usd(percentPaid),
  });
  return typeof granted === "object" ? `needs ${granted.percentNeeded.toString()}` : granted;
}

describe("a state's extension", () => {
  it.each([
    // Ala. Admin. Code 810-3-27-.03: automatic, no condition on payment
    ["AL", "", undefined, true],
    // A.R.S. 42-1107(A), (B): 90% with the federal extension and with Form 204
    ["AZ", "f", "0.9", true],
    ["AZ", "f", "0.8999", false],
    ["AZ", "o", "0.9", true],
    ["AZ", "o", "0.89", false],
    ["AZ", "", "1", false],
    // Massachusetts, personal income tax for residents: 80% paid by the due date
    ["MA", "", "0.8", true],
    ["MA", "", "0.79", false],
    ["MA", "fo", "0.79", false],
    // Iowa, expanded instructions 2023: 90%
    ["IA", "", "0.9", true],
    ["IA", "", "0.8999", false],
    // Hawaii, updates for tax year 2023: all of the estimate
    ["HI", "", "1", true],
    ["HI", "", "0.99", false],
    // Idaho Code 63-3033(a): 80%
    ["ID", "", "0.8", true],
    ["ID", "", "0.79", false],
    // Arkansas, extensions: with the federal one, or by its own form
    ["AR", "f", undefined, true],
    ["AR", "o", undefined, true],
    ["AR", "", undefined, false],
    // Ind. Code 6-8.1-6-1(c): with the federal one; 90% only avoids a penalty (45 IAC 15-1-2)
    ["IN", "f", "0", true],
    ["IN", "", "1", false],
    // 1 CCR 201-2, Rule 39-22-608, and the Utah page: automatic; 90% only avoids a penalty
    ["CO", "", "0", true],
    ["UT", "", "0", true],
    // N.J.A.C. 18:35-6.1: 80% of the final tax, with the federal one and with NJ-630
    ["NJ", "f", "0.8", true],
    ["NJ", "f", "0.79", false],
    ["NJ", "o", "0.8", true],
    ["NJ", "o", "0.79", false],
    ["NJ", "", "1", false],
    // 280-RICR-20-55-2.5 and 2.6: no payment needed with the federal one, 80% with RI-4868
    ["RI", "f", "1", true],
    ["RI", "f", "0.99", false],
    ["RI", "o", "0.8", true],
    ["RI", "fo", "0.8", true],
    ["RI", "fo", "0.79", false],
    // Oklahoma Form 504: no more tax owed with the federal one, 90% with 504-I
    ["OK", "f", "1", true],
    ["OK", "f", "0.95", false],
    ["OK", "o", "0.9", true],
    ["OK", "o", "0.89", false],
    // reports of Delaware, unsettled: nothing owed with the federal one, 90% with PIT-EXT
    ["DE", "f", "1", true],
    ["DE", "f", "0.95", false],
    ["DE", "o", "0.9", true],
    ["DE", "o", "0.89", false],
    // S.C. Code 12-6-4980: nothing owed with the federal one, or SC4868; 90% only avoids a penalty (12-54-70)
    ["SC", "f", "1", true],
    ["SC", "f", "0.95", false],
    ["SC", "o", "0", true],
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

  // the states' texts, in test/fixtures/published: the federal request is enough where no tax is due
  it.each(["CT", "DC", "DE", "MD", "MO", "OK", "RI", "SC"])(
    "of %s with the federal request alone is granted only if all tax is paid",
    (code) => {
      expect(outcome(ruleOf(code), "f", "1")).toBe("granted");
      expect(outcome(ruleOf(code), "f", "0.99")).toBe("not granted");
    }
  );

  // The percents of the texts named above.
  it.each([
    ["MA", "", "needs 0.8"],
    ["MA", "fo", "needs 0.8"],
    ["CT", "f", "needs 1"],
    ["NJ", "f", "needs 0.8"],
    ["NJ", "o", "needs 0.8"],
    ["AZ", "f", "needs 0.9"],
    ["RI", "f", "needs 1"],
    ["RI", "o", "needs 0.8"],
    ["OK", "o", "needs 0.9"],
  ])("of %s with %j depends on the percent paid: %s", (state, given, expected) => {
    expect(outcome(ruleOf(state), given)).toBe(expected);
  });

  it("needs the lowest percent of the requests that were made", () => {
    expect(outcome(ruleOf("RI"), "fo")).toBe("needs 0.8");
    expect(outcome(ruleOf("OK"), "fo")).toBe("needs 0.9");
    expect(outcome({ terms: [...ruleOf("RI").terms].reverse() }, "fo")).toBe("needs 0.8");
  });

  it.each([
    ["CT", "", "not granted"],
    ["CT", "o", "granted"],
    ["CT", "fo", "granted"],
    ["RI", "", "not granted"],
  ])("of %s with %j does not depend on the percent paid: %s", (state, given, expected) => {
    expect(outcome(ruleOf(state), given)).toBe(expected);
  });
});

describe("what grants the extension in the published texts", () => {
  it.each(published.cases)("$case ($source.mark, $source.section)", ({ inputs, expected }) => {
    const ways = ruleOf(inputs.state).terms.flatMap(({ by, percentPaid }) =>
      by === undefined ? [] : [[by, percentPaid?.toString() ?? null]]
    );
    expect(ways).toEqual(expected.ways);
  });

  it("is said in the text of the term, with its percent", () => {
    for (const { terms } of rulebook.stateExtensions.rows)
      for (const { percentPaid, text } of terms)
        if (percentPaid?.lessThan(1))
          expect(text).toContain(`${percentPaid.times(100).toString()}%`);
  });
});

describe("whatever the state", () => {
  const rows = fc.constantFrom(...rulebook.stateExtensions.rows);
  const shares = fc.integer({ min: 0, max: 120 }).map((percent) => usd(percent).div(100));

  it("a larger payment or one more request never takes the extension away", () => {
    fc.assert(
      fc.property(
        rows,
        fc.boolean(),
        fc.boolean(),
        shares,
        shares,
        ({ terms }, f, o, one, more) => {
          const now = { federalExtension: f, stateRequest: o, percentPaid: one };
          for (const better of [
            { ...now, percentPaid: one.plus(more) },
            { ...now, federalExtension: true },
            { ...now, stateRequest: true },
          ])
            if (stateExtensionGranted(terms, now) === "granted")
              expect(stateExtensionGranted(terms, better)).toBe("granted");
        }
      ),
      RUNS
    );
  });

  it("the percent needed is just enough", () => {
    fc.assert(
      fc.property(rows, fc.boolean(), fc.boolean(), ({ terms }, f, o) => {
        const now = { federalExtension: f, stateRequest: o };
        const open = stateExtensionGranted(terms, now);
        if (typeof open !== "object") return;
        const paying = (percentPaid: typeof open.percentNeeded) =>
          stateExtensionGranted(terms, { ...now, percentPaid });
        expect(paying(open.percentNeeded)).toBe("granted");
        expect(paying(open.percentNeeded.minus("0.0001"))).toBe("not granted");
      }),
      RUNS
    );
  });

  it("full payment and both requests grant it, unless there is no return", () => {
    for (const rule of rulebook.stateExtensions.rows)
      expect(outcome(rule, "fo", "1")).toBe(rule.dueDay === undefined ? "not granted" : "granted");
  });

  it("no payment and no request grant it only if it is automatic without a percent", () => {
    for (const rule of rulebook.stateExtensions.rows) {
      const isAutomatic = rule.terms.some(
        ({ by, percentPaid }) => by === "automatic" && percentPaid === undefined
      );
      expect(outcome(rule, "", "0")).toBe(isAutomatic ? "granted" : "not granted");
    }
  });
});
