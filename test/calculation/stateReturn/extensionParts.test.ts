import { describe, expect, it } from "vitest";
import { extensionParts } from "../../../src/calculation/stateReturn/extensionParts";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import { ruleOf } from "./givenState";

describe("the parts that decide the extension", () => {
  it("are the dates and the terms that grant it", () => {
    for (const rule of rulebook.stateExtensions.rows) {
      const [dates, ...grants] = extensionParts(calendarTaxYear(2025), rule);
      expect(dates).toBe(rule);
      expect(grants).toEqual(rule.terms.filter(({ effect }) => effect === "grants the extension"));
      expect(grants.length > 0).toBe(rule.dueDay !== undefined);
    }
  });

  it("leave out a term of a later tax year", () => {
    const rule = ruleOf("AL");
    const later = { ...rule, terms: rule.terms.map((term) => ({ ...term, fromTaxYear: 2025 })) };
    expect(extensionParts(calendarTaxYear(2024), later)).toEqual([later]);
    expect(extensionParts(calendarTaxYear(2025), later)).toHaveLength(2);
  });
});
