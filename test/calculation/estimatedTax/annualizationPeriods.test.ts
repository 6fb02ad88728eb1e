import { describe, expect, it } from "vitest";
import { written } from "../../../src/calendar/calendarDate";
import { annualizationPeriods } from "../../../src/calculation/estimatedTax/annualizationPeriods";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { fiscalYear } from "../given";

const texts = (...[year, filer]: [string, "resident" | "out of country" | "nonresident"]) =>
  annualizationPeriods(fiscalYear(year), filer, rulebook).map(({ months, factor, lastDay }) =>
    [months, factor.toString(), written(lastDay)].join(" ")
  );

// Form 2210 (2019), Schedule AI: periods through 3/31, 5/31, 8/31 and 12/31; line 2: 4, 2.4, 1.5, 1.
describe("the annualization periods", () => {
  const FOUR = ["3 4 2025-03-31", "5 2.4 2025-05-31", "8 1.5 2025-08-31", "12 1 2025-12-31"];

  it("are the months that end before each due date", () => {
    expect(texts("2025-12-31", "resident")).toEqual(FOUR);
    expect(texts("2025-12-31", "out of country")).toEqual(FOUR);
  });

  it("of a nonresident are the last three, as the form skips the first column", () => {
    expect(texts("2025-12-31", "nonresident")).toEqual(FOUR.slice(1));
  });

  // 26 U.S.C. 6654(k)(1): the corresponding months.
  it("of a fiscal year are its own months, February with its leap day", () => {
    expect(texts("2024-06-30", "resident")).toEqual([
      "3 4 2023-09-30",
      "5 2.4 2023-11-30",
      "8 1.5 2024-02-29",
      "12 1 2024-06-30",
    ]);
  });

  it("are not known before 2009", () => {
    expect(() => annualizationPeriods(calendarTaxYear(2008), "resident", rulebook)).toThrow(
      NotInTableError
    );
  });
});
