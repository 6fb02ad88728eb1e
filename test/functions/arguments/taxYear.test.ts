import { describe, expect, it } from "vitest";
import { calendarYear, taxYear } from "../../../src/functions/arguments/taxYear";
import { InputError } from "../../../src/functions/cells/inputError";
import { reading } from "./reading";

const yearOf = reading(taxYear, "year");

describe("a tax year", () => {
  it.each([
    [2025, "2025-12-31"],
    ["2025", "2025-12-31"],
    [" 2025 ", "2025-12-31"],
    [1850, "1850-12-31"],
    [2099, "2099-12-31"],
    ["2026-06-30", "2026-06-30"],
    ["6/30/2026", "2026-06-30"],
    [46203, "2026-06-30"],
    [46203.5, "2026-06-30"],
    ["2024-02-29", "2024-02-29"],
    ["2025-12-31", "2025-12-31"],
  ])("of %j ends on %s", (cell, lastDay) => {
    expect(yearOf(cell).lastDay).toBe(lastDay);
  });

  const ENTER = "Enter a year such as 2025, or the last date of a fiscal year, such as 6/30/2026.";
  it.each([
    ["next year", '"next year"'],
    [2025.5, "2025.5"],
    [25, "25"],
    [999, "999"],
    [-2025, "-2025"],
    ["25", '"25"'],
    ["02025", '"02025"'],
    [true, "TRUE"],
    [Number.NaN, "NaN"],
    ["4/15", '"4/15"'],
    ["2026-02-30", '"2026-02-30"'],
    [3_000_000, "3000000"],
  ])("is not read from %j", (cell, quoted) => {
    expect(() => yearOf(cell)).toThrow(
      new InputError("year", `${quoted} is not a tax year. ${ENTER}`)
    );
  });

  it.each([[null], [""], [0]])("is missing in %j", (cell) => {
    expect(() => yearOf(cell)).toThrow(new InputError("year", `The cell is blank. ${ENTER}`));
  });

  // 26 U.S.C. 441(e): a fiscal year ends on the last day of a month.
  it.each([
    [46127, "4/15/2026"],
    ["2026-06-29", "6/29/2026"],
    ["2/28/2024", "2/28/2024"],
  ])("cannot end in the middle of a month: %j", (cell, read) => {
    const complaint = `${read} is not the last date of a month, so no fiscal year ends on it. ${ENTER}`;
    expect(() => yearOf(cell)).toThrow(new InputError("year", complaint));
  });
});

describe("a tax year that is a calendar year", () => {
  const calendarYearOf = reading(calendarYear, "year");

  it.each([[2025], ["12/31/2025"]])("is read from %j", (cell) => {
    expect(calendarYearOf(cell).lastDay).toBe("2025-12-31");
  });

  it("is not read from the last date of a fiscal year", () => {
    expect(() => calendarYearOf("6/30/2026")).toThrow(
      new InputError(
        "year",
        "6/30/2026 is the end of a fiscal year. The state rules cover calendar years only. Enter a year such as 2025."
      )
    );
  });
});
