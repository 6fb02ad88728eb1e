import { describe, expect, it } from "vitest";
import { STATES } from "../../../src/calculation/state";
import { stateRule } from "../../../src/calculation/stateReturn/stateRule";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/state-extension-dates.json";
import { state } from "../given";

const of = (code: string, taxYear = 2025, allowUnverified = false) =>
  stateRule(calendarTaxYear(taxYear), state(code), allowUnverified, rulebook);

const NAMES_WITHOUT_RETURN = {
  ...{ AK: "Alaska", FL: "Florida", NH: "New Hampshire", NV: "Nevada", SD: "South Dakota" },
  ...{ TN: "Tennessee", TX: "Texas", WA: "Washington", WY: "Wyoming" },
};
const NAMES_FROM_MEMORY = { KS: "Kansas", MS: "Mississippi", WV: "West Virginia" };
const WITHOUT_RETURN = Object.keys(NAMES_WITHOUT_RETURN);
const FROM_MEMORY = Object.keys(NAMES_FROM_MEMORY);
const WITHOUT_RULE = ["AS", "GU", "MP", "PR", "VI", "AA", "AE", "AP", "foreign"];

describe("the rule of a state", () => {
  it.each(published.cases)(
    "$case ($source.mark, $source.section)",
    ({ case: name, inputs, expected, source }) => {
      const { rule } = of(inputs.state, 2025, true);
      expect([rule.dueDay, rule.extendedDay, rule.grant]).toEqual([
        ...[expected.due, expected.extended, expected.grant],
      ]);
      expect(rule.name).toBe(name);
      expect(rule.sourceTaxYear ?? null).toBe(expected.taxYear);
      expect(rule.source.confidence === "secondary").toBe(source.mark === "secondary");
    }
  );

  it("is held for every state and the District, some without a return, some from memory", () => {
    const codes = [
      ...published.cases.map(({ inputs }) => inputs.state),
      ...WITHOUT_RETURN,
      ...FROM_MEMORY,
    ];
    expect(codes.toSorted()).toEqual(
      STATES.filter((code) => !WITHOUT_RULE.includes(code)).toSorted()
    );
    expect(rulebook.stateExtensions.rows.map((row) => row.state).toSorted()).toEqual(
      codes.toSorted()
    );
  });

  it.each(Object.entries({ ...NAMES_WITHOUT_RETURN, ...NAMES_FROM_MEMORY }))(
    "of %s is that of %s",
    (code, name) => {
      expect(of(code, 2025, true).rule.name).toBe(name);
    }
  );

  // States without a broad income tax in tax year 2025.
  it.each(WITHOUT_RETURN)("is no return in %s", (code) => {
    const { rule, age } = of(code);
    expect(rule.sourceTaxYear).toBe(2025);
    expect([rule.grant, rule.dueDay, rule.extendedDay, age]).toEqual([
      ...["no return", undefined, undefined, "current"],
    ]);
  });

  it.each(WITHOUT_RULE)("is not held for %s", (code) => {
    expect(() => of(code, 2025, true)).toThrow(
      `State extensions of time to file: no rule is held for ${code} (rules/state-extensions.json)`
    );
  });

  it("is the state's own, whatever is asked", () => {
    for (const code of STATES)
      for (const taxYear of [2022, 2024, 2026]) {
        try {
          expect(of(code, taxYear, true).rule.state).toBe(code);
        } catch (thrown) {
          expect(thrown).toBeInstanceOf(NotInTableError);
        }
      }
  });
});

describe("how old a rule is", () => {
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

describe("a rule that cannot be relied on", () => {
  it.each(FROM_MEMORY)("of %s is refused unless it is taken knowingly", (code) => {
    const name = rulebook.stateExtensions.rows.find((row) => row.state === code)?.name ?? "";
    expect(() => of(code)).toThrow(
      `State extensions of time to file: ${name} is refused because the rule is only from memory; check the state's own text, or set acceptOld to yes (rules/state-extensions.json)`
    );
    expect(of(code, 2025, true)).toMatchObject({ rule: { state: code }, age: "undated" });
  });

  // the three from memory, as the federal dates
  it.each(FROM_MEMORY)("of %s holds the federal dates", (code) => {
    const { rule } = of(code, 2025, true);
    expect([rule.dueDay, rule.extendedDay, rule.grant]).toEqual([
      ...["04-15", "10-15", "with the federal extension"],
    ]);
  });

  it("of Delaware is refused because reports of it disagree", () => {
    expect(() => of("DE")).toThrow(
      "State extensions of time to file: Delaware is refused because reports of the rule disagree; check the state's own text, or set acceptOld to yes (rules/state-extensions.json)"
    );
    expect(of("DE", 2025, true).rule.dueDay).toBe("04-30");
  });

  it("is none of the others", () => {
    const refused = rulebook.stateExtensions.rows.filter((row) => {
      try {
        of(row.state);
        return false;
      } catch {
        return true;
      }
    });
    expect(refused.map((row) => row.state).toSorted()).toEqual(["DE", ...FROM_MEMORY]);
  });
});

describe("the tax years held", () => {
  // New Hampshire's tax on interest and dividends ended with tax year 2024.
  it("begin for New Hampshire with 2025, even for who accepts an old rule", () => {
    expect(of("NH", 2025).rule.grant).toBe("no return");
    for (const allowUnverified of [false, true])
      expect(() => of("NH", 2024, allowUnverified)).toThrow(
        "State extensions of time to file: New Hampshire is held only from tax year 2025 on (rules/state-extensions.json)"
      );
  });

  it.each([
    [2021, "no figure for 2021-12-31; held only from 2022-12-31 on"],
    [2027, "no figure for 2027-12-31; known only through 2026-12-31"],
  ])("do not reach %d", (taxYear, sentence) => {
    expect(() => of("CA", taxYear)).toThrow(NotInTableError);
    expect(() => of("CA", taxYear)).toThrow(sentence);
  });

  it.each([2022, 2026])("reach %d", (taxYear) => {
    expect(of("CA", taxYear).rule.state).toBe("CA");
  });
});
