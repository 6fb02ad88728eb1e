import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fiscalTaxYear, calendarTaxYear, type TaxYear } from "../../src/calculation/taxYear";
import { calendarDate } from "../../src/calendar/calendarDate";
import { ErrorCell } from "../../src/functions/errors";
import { payments } from "../../src/functions/paymentArguments";
import { InputError } from "../../src/inputError";

const OF_2025 = calendarTaxYear(2025);

/** Payments as text: day and amount. */
const read = (argument: unknown, taxYear: TaxYear = OF_2025): readonly string[] =>
  payments("payments", argument, taxYear).map(({ date: day, amount }) => `${day} ${amount.toString()}`);

function refusal(argument: unknown, taxYear: TaxYear = OF_2025): string {
  try {
    return read(argument, taxYear).join();
  } catch (thrown) {
    if (thrown instanceof InputError) return thrown.message;
    throw thrown;
  }
}

describe("rows of payments", () => {
  it("are none where the argument is left out", () => {
    expect(read(null)).toEqual([]);
    expect(read(undefined)).toEqual([]);
  });

  it("rise by day whatever their order, those of one day as they stand", () => {
    expect(
      read([
        ["2026-04-15", 3],
        ["2025-06-15", 1],
        ["2026-04-15", 2],
      ])
    ).toEqual(["2025-06-15 1", "2026-04-15 3", "2026-04-15 2"]);
  });

  it("take dates and amounts as cells hold them", () => {
    expect(
      read([
        [46127.75, "$1,234.50"],
        [" 2026-04-16 ", { basicValue: 0.1 }],
        [{ basicValue: 46129 }, 0],
      ])
    ).toEqual(["2026-04-15 1234.5", "2026-04-16 0.1", "2026-04-17 0"]);
  });

  it("are passed over where they are empty: blank, empty text or the zero some hosts send", () => {
    const rows = [
      [null, null],
      ["2026-04-15", 1],
      ["", "  "],
      [0, 0],
      [undefined, ""],
    ];
    expect(read(rows)).toEqual(["2026-04-15 1"]);
  });

  it("may lie on the first day of the tax year and not before", () => {
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
        `payments row 1: ${before} is before the tax year begins, ${begins}`
      );
    }
  });

  const date = "give a worksheet date, or text such as 2026-04-15";
  it.each([
    [[["Day", "Amount"]], `payments row 1: "Day" is not a date; ${date}`],
    [
      [
        ["2026-04-15", 1],
        ["", 2],
      ],
      `payments row 2: is empty; ${date}`,
    ],
    [
      [
        ["2026-04-15", 1],
        ["", ""],
        [0, 2],
      ],
      `payments row 3: is empty; ${date}`,
    ],
    [[["2026-04-15", "paid"]], 'payments row 1: "paid" is not an amount in dollars'],
    [[["2026-04-15", null]], "payments row 1: is empty; give dollars, 0 if there is nothing"],
    [[["2026-04-15", "(5)"]], 'payments row 1: "(5)" is negative; give dollars, zero or more'],
    [[["2026-04-15", 1, ""]], "payments: must be two columns wide, day and amount; this is 3"],
    [[["", ""]], "payments: has no payment in it; leave it out if nothing was paid"],
    [[], "payments: has no payment in it; leave it out if nothing was paid"],
  ])("refuse %j", (argument, sentence) => {
    expect(refusal(argument)).toBe(sentence);
  });

  it("refuse a single cell", () => {
    expect(refusal("2026-04-15")).toBe(
      "payments: must be two columns wide, day and amount; this is 1"
    );
    expect(refusal([["2026-04-15"], [100]])).toBe(
      "payments: must be two columns wide, day and amount; this is 1"
    );
  });

  it("pass an error cell through", () => {
    const broken = { code: "#REF!" };
    expect(() => read([[broken, 1]])).toThrow(ErrorCell);
    expect(() => read([["2026-04-15", broken]])).toThrow(ErrorCell);
  });

  it("name the row of the sheet's range in which the fault lies", () => {
    fc.assert(
      fc.property(fc.nat({ max: 20 }), fc.nat({ max: 20 }), (before, after) => {
        const good = ["2026-04-15", 1];
        const rows = [
          ...Array.from({ length: before }, () => good),
          ["2026-04-15", -1],
          ...Array.from({ length: after }, () => good),
        ];
        expect(refusal(rows)).toBe(
          `payments row ${String(before + 1)}: -1 is negative; give dollars, zero or more`
        );
      }),
      { numRuns: 100, seed: 4868 }
    );
  });
});
