import { describe, expect, it } from "vitest";
import { STATES } from "../../../src/calculation/state";
import { stateRule } from "../../../src/calculation/stateReturn/stateRule";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/state-extension-dates.json";
import { state } from "../given";

const of = (code: string, taxYear = 2025) =>
  stateRule(calendarTaxYear(taxYear), state(code), rulebook);

const NAMES_WITHOUT_RETURN = {
  AK: "Alaska",
  FL: "Florida",
  NH: "New Hampshire",
  NV: "Nevada",
  SD: "South Dakota",
  TN: "Tennessee",
  TX: "Texas",
  WA: "Washington",
  WY: "Wyoming",
};
const WITHOUT_RETURN = Object.keys(NAMES_WITHOUT_RETURN);
const WITHOUT_RULE = ["AS", "GU", "MP", "PR", "VI", "AA", "AE", "AP", "foreign"];

describe("the rule of a state", () => {
  it.each(published.cases)(
    "$case ($source.mark, $source.section)",
    ({ case: name, inputs, expected, source }) => {
      const rule = of(inputs.state);
      expect([rule.dueDay, rule.extendedDay]).toEqual([expected.due, expected.extended]);
      expect(rule.name).toBe(name);
      expect(rule.sourceTaxYear ?? null).toBe(expected.taxYear);
      expect(rule.source.confidence === "secondary").toBe(source.mark === "secondary");
    }
  );

  it("covers every state and the District of Columbia, some without a return", () => {
    const codes = [...published.cases.map(({ inputs }) => inputs.state), ...WITHOUT_RETURN];
    expect(codes.toSorted()).toEqual(
      STATES.filter((code) => !WITHOUT_RULE.includes(code)).toSorted()
    );
    expect(rulebook.stateExtensions.rows.map((row) => row.state).toSorted()).toEqual(
      codes.toSorted()
    );
  });

  it.each(Object.entries(NAMES_WITHOUT_RETURN))("of %s is that of %s", (code, name) => {
    expect(of(code).name).toBe(name);
  });

  // States without a broad income tax in tax year 2025.
  it.each(WITHOUT_RETURN)("is no return in %s", (code) => {
    const { sourceTaxYear, dueDay, extendedDay, terms } = of(code);
    expect([sourceTaxYear, dueDay, extendedDay]).toEqual([2025, undefined, undefined]);
    expect(terms.map((term) => [term.effect, term.sourceTaxYear])).toEqual([["note", 2025]]);
  });

  it.each(WITHOUT_RULE)("does not cover %s", (code) => {
    expect(() => of(code)).toThrow(
      `State extensions of time to file: There is no rule for ${code} (rules/state-extensions.json). Check the state's current instructions.`
    );
  });

  it("is that of the state, in every tax year", () => {
    for (const code of STATES)
      for (const taxYear of [2022, 2024, 2026]) {
        try {
          expect(of(code, taxYear).state).toBe(code);
        } catch (thrown) {
          expect(thrown).toBeInstanceOf(NotInTableError);
        }
      }
  });
});

describe("the tax years covered", () => {
  // New Hampshire's tax on interest and dividends ended with tax year 2024.
  it("begin for New Hampshire with 2025", () => {
    expect(of("NH", 2025).name).toBe("New Hampshire");
    expect(() => of("NH", 2024)).toThrow(
      "State extensions of time to file: New Hampshire is covered from tax year 2025 (rules/state-extensions.json). Check the state's instructions for that year."
    );
  });

  it.each([
    [2021, "There is no figure for 12/31/2021. The table begins on 12/31/2022"],
    [2027, "There is no figure for 12/31/2027. The table covers dates through 12/31/2026"],
  ])("do not include %d", (taxYear, sentence) => {
    expect(() => of("CA", taxYear)).toThrow(NotInTableError);
    expect(() => of("CA", taxYear)).toThrow(sentence);
  });

  it.each([2022, 2026])("include %d", (taxYear) => {
    expect(of("CA", taxYear).state).toBe("CA");
  });
});
