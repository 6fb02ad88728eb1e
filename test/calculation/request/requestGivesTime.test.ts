import { describe, expect, it } from "vitest";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import type { FilerType } from "../../../src/calculation/filerType";
import { requestGivesTime } from "../../../src/calculation/request/requestGivesTime";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import { day } from "../given";

const givesTime = (begins?: string, ends?: string, filer: FilerType = "resident"): boolean => {
  const postponement =
    begins === undefined || ends === undefined
      ? undefined
      : { begins: day(begins), ends: day(ends) };
  return requestGivesTime(clientDates(calendarTaxYear(2024), filer, { postponement }, rulebook));
};

// 26 U.S.C. 6081(a) and 7508A(a). The due dates of 2024 are April 15 (out of the country June 16) and October 15, 2025.
describe("a request", () => {
  it.each([
    ["without a postponement", undefined, undefined],
    ["under one that ends a day before the extended due date", "2025-01-07", "2025-10-14"],
    ["under one that begins after the regular due date", "2025-04-16", "2025-10-15"],
    ["under one that moves only the extended due date", "2025-10-01", "2026-02-02"],
  ])("gives time %s", (_what, begins, ends) => {
    expect(givesTime(begins, ends)).toBe(true);
  });

  it.each([
    ["to the extended due date", "2025-01-07", "2025-10-15"],
    ["from the regular due date on", "2025-04-15", "2025-10-15"],
    ["past the extended due date", "2025-01-07", "2026-02-02"],
  ])("gives none under a postponement %s", (_what, begins, ends) => {
    expect(givesTime(begins, ends)).toBe(false);
  });

  it("of a taxpayer out of the country gives none where the postponement begins by June", () => {
    expect(givesTime("2025-06-16", "2025-10-15", "out of country")).toBe(false);
    expect(givesTime("2025-06-17", "2025-10-15", "out of country")).toBe(true);
  });
});
