import { describe, expect, it } from "vitest";
import { calendarDate } from "../../src/calendar/calendarDate";
import {
  day,
  disasterPostponement,
  optionalDay,
  requireAfterTaxYear,
  taxYear,
} from "../../src/functions/dayArguments";
import { calendarTaxYear } from "../../src/calculation/taxYear";
import { InputError } from "../../src/inputError";

const WANTED = "give a worksheet date, or text such as 2026-04-15";
const noDate = (quoted: string) => new InputError("on", `${quoted} is not a date; ${WANTED}`);

describe("a day", () => {
  // Serials as worksheets count them: 61 is 1900-03-01, 46127 is 2026-04-15.
  it.each([
    [46127, "2026-04-15"],
    [46127.75, "2026-04-15"],
    [46127.99999, "2026-04-15"],
    [61, "1900-03-01"],
    [25569, "1970-01-01"],
    [109574, "2199-12-31"],
    ["2026-04-15", "2026-04-15"],
    [" 2024-02-29 ", "2024-02-29"],
    [{ type: "Double", basicValue: 46127, numberFormat: "yyyy-mm-dd" }, "2026-04-15"],
  ])("of %j is %s", (cell, read) => {
    expect(day("on", cell)).toBe(read);
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
    ["4/15/2026", '"4/15/2026"'],
    ["2026-02-30", '"2026-02-30"'],
    ["2025-02-29", '"2025-02-29"'],
    ["2026-4-15", '"2026-4-15"'],
    ["20260415", '"20260415"'],
    ["46127", '"46127"'],
    ["2026-04-15T00:00", '"2026-04-15T00:00"'],
    ["April 15", '"April 15"'],
  ])("is not read from %j", (cell, quoted) => {
    expect(() => day("on", cell)).toThrow(noDate(quoted));
  });

  it.each([[null], [undefined], [""], [0]])("is missing in %j", (cell) => {
    expect(() => day("on", cell)).toThrow(new InputError("on", `is empty; ${WANTED}`));
    expect(optionalDay("on", cell)).toBeUndefined();
  });

  it.each([[109575], ["2200-01-01"]])("beyond the year 2199 is refused: %j", (cell) => {
    const sentence = "2200-01-01 lies too far ahead; no day after 2199-12-31 is worked out";
    expect(() => day("on", cell)).toThrow(new InputError("on", sentence));
    expect(() => optionalDay("on", cell)).toThrow(new InputError("on", sentence));
  });

  // A worksheet holds no date before this one that agrees with the calendar.
  it.each([["1900-02-28"], ["1850-04-15"], ["0001-01-01"]])(
    "before worksheet dates begin is refused: %s",
    (text) => {
      expect(() => day("on", text)).toThrow(InputError);
      expect(() => day("on", text)).toThrow(`on: ${text} `);
    }
  );

  it("that may be left out is still refused when it cannot be read", () => {
    expect(() => optionalDay("on", "4/15")).toThrow(noDate('"4/15"'));
  });
});

describe("a tax year", () => {
  it.each([
    [2025, "2025-12-31"],
    ["2025", "2025-12-31"],
    [" 2025 ", "2025-12-31"],
    [1850, "1850-12-31"],
    [2099, "2099-12-31"],
    ["2026-06-30", "2026-06-30"],
    [46203, "2026-06-30"],
    [46203.5, "2026-06-30"],
    ["2024-02-29", "2024-02-29"],
    ["2025-12-31", "2025-12-31"],
  ])("of %j ends on %s", (cell, lastDay) => {
    expect(taxYear("year", cell).lastDay).toBe(lastDay);
  });

  const WANTED_YEAR = "give a year such as 2025, or the last day of a fiscal year";
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
    expect(() => taxYear("year", cell)).toThrow(
      new InputError("year", `${quoted} is not a tax year; ${WANTED_YEAR}`)
    );
  });

  it.each([[null], [""], [0]])("is missing in %j", (cell) => {
    expect(() => taxYear("year", cell)).toThrow(new InputError("year", `is empty; ${WANTED_YEAR}`));
  });

  // 26 U.S.C. 441(e): a fiscal year ends on the last day of a month.
  it.each([
    [46127, "2026-04-15"],
    ["2026-06-29", "2026-06-29"],
    ["2024-02-28", "2024-02-28"],
  ])("cannot end in the middle of a month: %j", (cell, read) => {
    const complaint = `${read} is not the last day of a month, so no fiscal year ends on it; ${WANTED_YEAR}`;
    expect(() => taxYear("year", cell)).toThrow(new InputError("year", complaint));
  });
});

describe("a disaster-relief period", () => {
  const both = "give both days of the relief, or neither";

  it("is read from both its days", () => {
    expect(disasterPostponement("2026-01-22", 46181)).toEqual({
      begins: "2026-01-22",
      postponementEnds: "2026-06-08",
    });
    expect(disasterPostponement("2026-01-22", "2026-01-22")).toBeDefined();
  });

  it("may be left out, its cells empty in any way", () => {
    expect(disasterPostponement(null, 0)).toBeUndefined();
    expect(disasterPostponement("", undefined)).toBeUndefined();
  });

  it.each([
    [null, "2026-06-08", "postponementBegins", `is empty while postponedTo is given; ${both}`],
    ["2026-01-22", 0, "postponementEnds", `is empty while reliefBegins is given; ${both}`],
    [
      "2026-06-08",
      "2026-06-07",
      "postponementEnds",
      "2026-06-07 is before the relief begins, 2026-06-08",
    ],
  ])("is refused from %j to %j", (begins, until, argument, complaint) => {
    expect(() => disasterPostponement(begins, until)).toThrow(new InputError(argument, complaint));
  });
});

describe("a day that must follow the tax year", () => {
  const year = calendarTaxYear(2025);

  it("may be the first day after it", () => {
    expect(() => {
      requireAfterTaxYear("paidOn", calendarDate("2026-01-01"), year);
    }).not.toThrow();
  });

  it("is refused on the last day of it, with a word on workbooks that count from 1904", () => {
    const sentence =
      "2025-12-31 is not after the tax year ends, 2025-12-31; check the year, and that the workbook does not count dates from 1904";
    expect(() => {
      requireAfterTaxYear("paidOn", calendarDate("2025-12-31"), year);
    }).toThrow(new InputError("paidOn", sentence));
  });
});
