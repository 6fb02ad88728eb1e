import { describe, expect, it } from "vitest";
import { optional } from "../../../src/functions/arguments/argumentKind";
import { date, dateAfterYear } from "../../../src/functions/arguments/date";
import { InputError } from "../../../src/functions/cells/inputError";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { written } from "../../../src/calendar/calendarDate";
import { reading } from "./reading";

const day = reading(date, "on");
const optionalDay = reading(optional(date), "on");
const noDate = (quoted: string) =>
  new InputError("on", `${quoted} is not a date. Enter a date such as 4/15/2026.`);

describe("a date", () => {
  // Serials as worksheets count them: 61 is 1900-03-01, 46127 is 2026-04-15.
  it.each([
    [46127, "2026-04-15"],
    [46127.75, "2026-04-15"],
    [46127.99999, "2026-04-15"],
    [61, "1900-03-01"],
    [25569, "1970-01-01"],
    [109574, "2199-12-31"],
    ["2026-04-15", "2026-04-15"],
    ["4/15/2026", "2026-04-15"],
    [" 04/15/26 ", "2026-04-15"],
    ["April 15, 2026", "2026-04-15"],
    [" 2024-02-29 ", "2024-02-29"],
    [{ type: "Double", basicValue: 46127, numberFormat: "m/d/yyyy" }, "2026-04-15"],
  ])("of %j is %s", (cell, read) => {
    expect(written(day(cell))).toBe(read);
  });

  it.each([
    [60, "60"],
    [60.9, "60.9"],
    [1, "1"],
    [-46127, "-46127"],
    [2_958_466, "2958466"],
    [Number.NaN, "NaN"],
    [Number.POSITIVE_INFINITY, "Infinity"],
    [true, "TRUE"],
    ["4/15", '"4/15"'],
    ["15/4/2026", '"15/4/2026"'],
    ["2/30/2026", '"2/30/2026"'],
    ["2026-02-30", '"2026-02-30"'],
    ["2025-02-29", '"2025-02-29"'],
    ["2026-4-15", '"2026-4-15"'],
    ["20260415", '"20260415"'],
    ["46127", '"46127"'],
    ["2026-04-15T00:00", '"2026-04-15T00:00"'],
    ["April 15", '"April 15"'],
  ])("is not read from %j", (cell, quoted) => {
    expect(() => day(cell)).toThrow(noDate(quoted));
  });

  it.each([[null], [undefined], [""], [0]])("is missing in %j", (cell) => {
    expect(() => day(cell)).toThrow(
      new InputError("on", "The cell is blank. Enter a date such as 4/15/2026.")
    );
    expect(optionalDay(cell)).toBeUndefined();
  });

  it.each([[109575], ["2200-01-01"]])("beyond the year 2199 is refused: %j", (cell) => {
    const sentence = "1/1/2200 is out of range. Enter a date from 3/1/1900 through 12/31/2199.";
    expect(() => day(cell)).toThrow(new InputError("on", sentence));
    expect(() => optionalDay(cell)).toThrow(new InputError("on", sentence));
  });

  // A worksheet holds no date before this one that agrees with the calendar.
  it.each([
    ["1900-02-28", "2/28/1900"],
    ["4/15/1850", "4/15/1850"],
    ["0001-01-01", "1/1/1"],
  ])("before worksheet dates begin is refused: %s", (text, shown) => {
    expect(() => day(text)).toThrow(
      new InputError(
        "on",
        `${shown} is out of range. Enter a date from 3/1/1900 through 12/31/2199.`
      )
    );
  });

  it("that may be left out is still refused when it cannot be read", () => {
    expect(() => optionalDay("4/15")).toThrow(noDate('"4/15"'));
  });
});

describe("a date that must follow the tax year", () => {
  const paidOn = reading(dateAfterYear, "paidOn");
  const earlier = { taxYear: calendarTaxYear(2025) };

  it("may be the first date after it", () => {
    expect(written(paidOn("1/1/2026", earlier))).toBe("2026-01-01");
  });

  it("is refused on the last date of it, with a word on workbooks of the 1904 date system", () => {
    expect(() => paidOn("12/31/2025", earlier)).toThrow(
      new InputError(
        "paidOn",
        "12/31/2025 is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system."
      )
    );
  });
});
