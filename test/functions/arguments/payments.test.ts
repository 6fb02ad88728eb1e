import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ErrorCell } from "../../../src/functions/cells/hostError";
import { payments } from "../../../src/functions/arguments/ranges";
import { fiscalTaxYear, calendarTaxYear, type TaxYear } from "../../../src/calculation/taxYear";
import { calendarDate } from "../../../src/calendar/calendarDate";
import { reading, sentenceOf } from "./reading";

const OF_2025 = calendarTaxYear(2025);

const paymentsOf = reading(payments, "payments");

/** Payments as text: date and amount. */
const read = (argument: unknown, taxYear: TaxYear = OF_2025): readonly string[] =>
  paymentsOf(argument, { taxYear }).map(({ date, amount }) => `${date} ${amount.toString()}`);

const refusal = (argument: unknown, taxYear?: TaxYear): string =>
  sentenceOf(() => read(argument, taxYear));

/** A date as messages write it. */
const us = (date: string): string =>
  new Intl.DateTimeFormat("en-US", { timeZone: "UTC" }).format(Date.parse(date));

describe("rows of payments", () => {
  it("are none where the argument is left out", () => {
    expect(read(null)).toEqual([]);
    expect(read(undefined)).toEqual([]);
  });

  it.each([[[["", ""]]], [[]], [[[""]]], [[[0, null]]], [[[null, null, ""]]], [""]])(
    "are none in a blank range: %j",
    (blank) => {
      expect(read(blank)).toEqual([]);
    }
  );

  it("come back in order of date, those of one date as entered", () => {
    expect(
      read([
        ["2026-04-15", 3],
        ["2025-06-15", 1],
        ["2026-04-15", 2],
      ])
    ).toEqual(["2025-06-15 1", "2026-04-15 3", "2026-04-15 2"]);
  });

  it("take dates and amounts in every form of a cell", () => {
    expect(
      read([
        [46127.75, "$1,234.50"],
        [" 2026-04-16 ", { basicValue: 0.1 }],
        [{ basicValue: 46129 }, 0],
      ])
    ).toEqual(["2026-04-15 1234.5", "2026-04-16 0.1", "2026-04-17 0"]);
  });

  it("are ignored where they are blank: null, empty text or the zero that some hosts send", () => {
    const rows = [
      [null, null],
      ["2026-04-15", 1],
      ["", "  "],
      [0, 0],
      [undefined, ""],
    ];
    expect(read(rows)).toEqual(["2026-04-15 1"]);
  });

  it("may be dated on the first date of the tax year and not before", () => {
    const fiscal = (lastDay: string): TaxYear => {
      const year = fiscalTaxYear(calendarDate(lastDay));
      if (!year) throw new RangeError(`no fiscal year ends on ${lastDay}`);
      return year;
    };
    const first: readonly (readonly [TaxYear, string, string])[] = [
      [OF_2025, "2025-01-01", "2024-12-31"],
      [fiscal("2026-06-30"), "2025-07-01", "2025-06-30"],
      [fiscal("2024-02-29"), "2023-03-01", "2023-02-28"],
      [fiscal("2025-02-28"), "2024-03-01", "2024-02-29"],
    ];
    for (const [year, begins, before] of first) {
      expect(read([[begins, 1]], year)).toEqual([`${begins} 1`]);
      expect(refusal([[before, 1]], year)).toBe(
        `payments row 1: ${us(before)} is before the tax year begins on ${us(begins)}. Check the date and the year.`
      );
    }
  });

  const enter = "Enter a date such as 4/15/2026.";
  it.each([
    [[["Day", "Amount"]], `payments row 1: "Day" is not a date. ${enter}`],
    [
      [
        ["2026-04-15", 1],
        ["", 2],
      ],
      `payments row 2: The cell is blank. ${enter}`,
    ],
    [
      [
        ["2026-04-15", 1],
        ["", ""],
        [0, 2],
      ],
      `payments row 3: The cell is blank. ${enter}`,
    ],
    [
      [["2026-04-15", "paid"]],
      'payments row 1: "paid" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
    ],
    [
      [["2026-04-15", null]],
      "payments row 1: The cell is blank. Enter a dollar amount, or 0 if there is none.",
    ],
    [
      [["2026-04-15", "(5)"]],
      'payments row 1: "(5)" is negative. Enter zero or a positive dollar amount.',
    ],
    [
      [["2026-04-15", 1, ""]],
      "payments: The range has 3 columns. Select two columns, date and amount.",
    ],
  ])("refuse %j", (argument, sentence) => {
    expect(refusal(argument)).toBe(sentence);
  });

  it("refuse a single cell", () => {
    expect(refusal("2026-04-15")).toBe(
      "payments: The range has 1 column. Select two columns, date and amount."
    );
    expect(refusal([["2026-04-15"], [100]])).toBe(
      "payments: The range has 1 column. Select two columns, date and amount."
    );
  });

  it("pass an error cell through", () => {
    const broken = { code: "#REF!" };
    expect(() => read([[broken, 1]])).toThrow(ErrorCell);
    expect(() => read([["2026-04-15", broken]])).toThrow(ErrorCell);
  });

  it("name the row of the range that cannot be read", () => {
    fc.assert(
      fc.property(fc.nat({ max: 20 }), fc.nat({ max: 20 }), (before, after) => {
        const good = ["2026-04-15", 1];
        const rows = [
          ...Array.from({ length: before }, () => good),
          ["2026-04-15", -1],
          ...Array.from({ length: after }, () => good),
        ];
        expect(refusal(rows)).toBe(
          `payments row ${String(before + 1)}: -1 is negative. Enter zero or a positive dollar amount.`
        );
      }),
      { numRuns: 100, seed: 4868 }
    );
  });
});
