import { describe, expect, it } from "vitest";
import { formEdition } from "../../../src/calculation/request/formEdition";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import { fiscalYear } from "../given";

// Form 4868 is for the tax year beginning in its year: common practice, no source. Reach: rules/request-lines.json.
describe("the edition of the form", () => {
  it.each([
    ["a calendar year", calendarTaxYear(2025), 2025],
    ["a fiscal year, by its first day", fiscalYear("2026-06-30"), 2025],
    ["the first edition covered", calendarTaxYear(2016), 2016],
  ])("of %s", (_what, year, edition) => {
    expect(formEdition(year, rulebook.requestLines)).toBe(edition);
  });

  it.each([
    [calendarTaxYear(2015), "The table begins on 12/31/2016"],
    [calendarTaxYear(2026), "There is no figure for 12/31/2026"],
    [fiscalYear("2027-06-30"), "There is no figure for 12/31/2026"],
  ])("is refused outside the table: %j", (year, sentence) => {
    expect(() => formEdition(year, rulebook.requestLines)).toThrow(sentence);
  });
});
