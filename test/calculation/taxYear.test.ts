import { describe, expect, it } from "vitest";
import { calendarTaxYear, fiscalTaxYear } from "../../src/calculation/taxYear";
import { day } from "./given";

describe("a tax year", () => {
  it("of the calendar ends on December 31", () => {
    expect(calendarTaxYear(2025)).toEqual({ lastDay: "2025-12-31" });
  });

  // 26 U.S.C. 441(e): a fiscal year ends on the last day of a month.
  it.each(["2025-06-30", "2024-02-29", "2025-02-28", "2025-12-31"])("may end on %s", (last) => {
    expect(fiscalTaxYear(day(last))).toEqual({ lastDay: last });
  });

  it.each(["2025-06-29", "2024-02-28", "2025-12-30", "2025-07-01"])("cannot end on %s", (last) => {
    expect(fiscalTaxYear(day(last))).toBeUndefined();
  });
});
