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
const NAMES_UNVERIFIED = { KS: "Kansas", MS: "Mississippi", WV: "West Virginia" };
const WITHOUT_RETURN = Object.keys(NAMES_WITHOUT_RETURN);
const UNVERIFIED = Object.keys(NAMES_UNVERIFIED);
const WITHOUT_RULE = ["AS", "GU", "MP", "PR", "VI", "AA", "AE", "AP", "foreign"];

describe("the rule of a state", () => {
  it.each(published.cases)(
    "$case ($source.mark, $source.section)",
    ({ case: name, inputs, expected, source }) => {
      const { rule } = of(inputs.state);
      expect([rule.dueDay, rule.extendedDay, rule.grant]).toEqual([
        expected.due,
        expected.extended,
        expected.grant,
      ]);
      expect(rule.name).toBe(name);
      expect(rule.sourceTaxYear ?? null).toBe(expected.taxYear);
      expect(rule.source.confidence === "secondary").toBe(source.mark === "secondary");
    }
  );

  it("covers every state and the District of Columbia, some without a return, some unverified", () => {
    const codes = [
      ...published.cases.map(({ inputs }) => inputs.state),
      ...WITHOUT_RETURN,
      ...UNVERIFIED,
    ];
    expect(codes.toSorted()).toEqual(
      STATES.filter((code) => !WITHOUT_RULE.includes(code)).toSorted()
    );
    expect(rulebook.stateExtensions.rows.map((row) => row.state).toSorted()).toEqual(
      codes.toSorted()
    );
  });

  it.each(Object.entries({ ...NAMES_WITHOUT_RETURN, ...NAMES_UNVERIFIED }))(
    "of %s is that of %s",
    (code, name) => {
      expect(of(code).rule.name).toBe(name);
    }
  );

  // States without a broad income tax in tax year 2025.
  it.each(WITHOUT_RETURN)("is no return in %s", (code) => {
    const { rule, age } = of(code);
    expect(rule.sourceTaxYear).toBe(2025);
    expect([rule.grant, rule.dueDay, rule.extendedDay, age]).toEqual([
      "no return",
      undefined,
      undefined,
      "current",
    ]);
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
          expect(of(code, taxYear).rule.state).toBe(code);
        } catch (thrown) {
          expect(thrown).toBeInstanceOf(NotInTableError);
        }
      }
  });
});

describe("the age of a rule", () => {
  it.each([
    // tax years of the texts: test/fixtures/published/state-extension-dates.json
    ["CA", 2023, "current"],
    ["CA", 2024, "current"],
    ["CA", 2025, "older"],
    ["IA", 2022, "current"],
    ["IA", 2023, "current"],
    ["IA", 2024, "older"],
    ["GA", 2022, "undated"],
    ["NY", 2025, "undated"],
    ["TX", 2025, "current"],
    ["TX", 2026, "older"],
  ] as const)("%s for %d: %s", (code, taxYear, age) => {
    expect(of(code, taxYear).age).toBe(age);
  });
});

describe("a rule in doubt", () => {
  it.each(UNVERIFIED)("of %s is returned as unverified", (code) => {
    expect(of(code)).toMatchObject({
      rule: { state: code },
      age: "undated",
      doubt: "the rule is unverified",
    });
  });

  // the three unverified states, with the federal dates
  it.each(UNVERIFIED)("of %s has the federal dates", (code) => {
    const { rule } = of(code);
    expect([rule.dueDay, rule.extendedDay, rule.grant]).toEqual([
      "04-15",
      "10-15",
      "with the federal extension",
    ]);
  });

  it("of Delaware says that its sources disagree", () => {
    expect(of("DE")).toMatchObject({
      rule: { dueDay: "04-30" },
      doubt: "reports of the rule disagree",
    });
  });

  it("is none of the others", () => {
    const doubtful = rulebook.stateExtensions.rows.filter(
      (row) => of(row.state).doubt !== undefined
    );
    expect(doubtful.map((row) => row.state).toSorted()).toEqual(["DE", ...UNVERIFIED]);
  });
});

describe("the tax years covered", () => {
  // New Hampshire's tax on interest and dividends ended with tax year 2024.
  it("begin for New Hampshire with 2025", () => {
    expect(of("NH", 2025).rule.grant).toBe("no return");
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
    expect(of("CA", taxYear).rule.state).toBe("CA");
  });
});
