import { describe, expect, it } from "vitest";
import { cleanHistoryRule } from "../../../src/calculation/penalty/cleanHistoryRule";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { fiscalYear } from "../given";

const nameFor = (year: number | string): string =>
  cleanHistoryRule(typeof year === "number" ? calendarTaxYear(year) : fiscalYear(year), rulebook)
    .name;

const FTA = "first-time abatement (FTA)";
const BOTH = "automatic exemption from penalty (AEP) or first-time abatement (FTA)";
const AEP = "automatic exemption from penalty (AEP)";

describe("the relief for a clean history", () => {
  // Reports of 2026: the exemption from tax year 2025 on, alone for returns due on or after January 1, 2027. A return of a fiscal
  // year is due on the 15th day of the fourth month after it (section 6072(a)), so that of August 2026 on December 15, 2026.
  it.each([
    [2001, FTA],
    [2024, FTA],
    ["2025-11-30", FTA],
    [2025, BOTH],
    ["2026-06-30", BOTH],
    ["2026-08-31", BOTH],
    ["2026-09-30", AEP],
    [2026, AEP],
  ])("of %s is %s", (year, name) => {
    expect(nameFor(year)).toBe(name);
  });

  it.each([2000, 2027])("is refused for %d", (year) => {
    expect(() => nameFor(year)).toThrow(NotInTableError);
  });

  it("looks at three years, whatever its name", () => {
    expect(rulebook.cleanHistoryRelief.rows.map(({ lookBackYears }) => lookBackYears)).toEqual([
      3, 3, 3,
    ]);
  });

  it("is listed in the order of the tax years", () => {
    const from = rulebook.cleanHistoryRelief.rows.map((row) => row.from);
    expect(from).toEqual([...new Set(from)].toSorted());
    expect(from[0]).toBe(rulebook.cleanHistoryRelief.knownFrom);
  });
});
