import { describe, expect, it } from "vitest";
import { returnDueDate } from "../../../src/calculation/dueDate/returnDueDate";
import type { FilerType } from "../../../src/calculation/filerType";
import { isTimelyRequest } from "../../../src/calculation/request/isTimelyRequest";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import { day } from "../given";

describe("a request on time", () => {
  // 26 CFR 1.6081-4(b): the application must be filed by the due date of the return; 26 U.S.C. 7503 moves that date.
  it.each<[number, FilerType, string, boolean]>([
    [2025, "resident", "2026-04-15", true],
    [2025, "resident", "2026-04-16", false],
    [2025, "resident", "2026-01-05", true],
    // April 15, 2023 was a Saturday, and Monday was Emancipation Day
    [2022, "resident", "2023-04-18", true],
    [2022, "resident", "2023-04-19", false],
    // 26 CFR 1.6081-5(a)(5): June 15 out of the country
    [2025, "out of country", "2026-06-15", true],
    [2025, "out of country", "2026-06-16", false],
  ])("for %d (%s), made on %s: %s", (year, filerType, requestedOn, expected) => {
    const regular = returnDueDate(calendarTaxYear(year), filerType, {}, rulebook);
    expect(isTimelyRequest(day(requestedOn), regular)).toBe(expected);
  });
});
