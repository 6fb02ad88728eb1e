import { describe, expect, it } from "vitest";
import { written } from "../../../src/calendar/calendarDate";
import { returnDeadlines } from "../../../src/calculation/season/returnDeadlines";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";

const inBrief = (year: number, filerType: "resident" | "out of country") =>
  returnDeadlines(calendarTaxYear(year), filerType, {}, rulebook).map(
    ({ label, date, extension, dateWithoutExtension }) =>
      [
        label.split(" ").slice(0, 3).join(" "),
        written(date),
        extension,
        written(dateWithoutExtension),
      ].join(" | ")
  );

// 26 U.S.C. 6151(a), 6081(a), 6651(a) last sentence (60 days), 6654(c)(2): the extension moves the return and nothing else.
describe("the deadlines of a return", () => {
  it("say what the extension moves", () => {
    expect(inBrief(2025, "resident")).toEqual([
      "Pay the tax | 2026-04-15 | not moved | 2026-04-15",
      "File or request | 2026-04-15 | not moved | 2026-04-15",
      "First 2026 estimated | 2026-04-15 | not moved | 2026-04-15",
      "Second 2026 estimated | 2026-06-15 | not moved | 2026-06-15",
      "Third 2026 estimated | 2026-09-15 | not moved | 2026-09-15",
      "Fourth 2026 estimated | 2027-01-15 | not moved | 2027-01-15",
      "File the extended | 2026-10-15 | moved | 2026-04-15",
      "Last day before | 2026-12-14 | moved | 2026-06-14",
    ]);
  });

  // 26 CFR 1.6081-5(a): without a request the return of a client out of the country is due in June.
  it("without an extension are those of June for a client out of the country", () => {
    const dates = inBrief(2024, "out of country");
    expect(dates).toContain("File the extended | 2025-10-15 | moved | 2025-06-16");
    expect(dates).toContain("Last day before | 2025-12-14 | moved | 2025-08-14");
  });
});
