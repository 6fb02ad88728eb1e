import { describe, expect, it } from "vitest";
import { calendarYear, taxYear } from "../../../src/functions/arguments/taxYear";
import { InputError } from "../../../src/functions/cells/inputError";
import { written } from "../../../src/calendar/calendarDate";
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
    ["12/27/2025", "2025-12-31"],
    ["1/3/2026", "2025-12-31"],
    ["2/28/2024", "2024-02-29"],
  ])("of %j ends on %s", (cell, lastDay) => {
    expect(written(yearOf(cell).lastDay)).toBe(lastDay);
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
    ["0001-01-01", '"0001-01-01"'],
    ["1000-12-31", '"1000-12-31"'],
  ])("is not read from %j", (cell, quoted) => {
    expect(() => yearOf(cell)).toThrow(
      new InputError("year", `${quoted} is not a tax year. ${ENTER}`)
    );
  });

  it.each([[null], [""], [0]])("is missing in %j", (cell) => {
    expect(() => yearOf(cell)).toThrow(new InputError("year", `The cell is blank. ${ENTER}`));
  });

  // 26 U.S.C. 441(e), (f)(1); 26 CFR 1.441-2(a)(2).
  it.each([
    [46127, "4/15/2026"],
    ["2026-06-23", "6/23/2026"],
    ["2026-07-04", "7/4/2026"],
  ])("cannot end in the middle of a month: %j", (cell, read) => {
    const complaint = `${read} is not within six days before or three days after the end of a month, so no tax year ends on it. ${ENTER}`;
    expect(() => yearOf(cell)).toThrow(new InputError("year", complaint));
  });
});

describe("a tax year that is a calendar year", () => {
  const calendarYearOf = reading(calendarYear, "year");

  it.each([[2025], ["12/31/2025"]])("is read from %j", (cell) => {
    expect(written(calendarYearOf(cell).lastDay)).toBe("2025-12-31");
  });

  it("is not read from the end of a 52/53-week year", () => {
    expect(() => calendarYearOf("12/27/2025")).toThrow("12/27/2025 is the end of a fiscal year.");
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
