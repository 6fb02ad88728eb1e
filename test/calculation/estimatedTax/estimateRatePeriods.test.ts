import { describe, expect, it } from "vitest";
import { written } from "../../../src/calendar/calendarDate";
import { estimateRatePeriods } from "../../../src/calculation/estimatedTax/estimateRatePeriods";
import { calendarTaxYear, fiscalTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { day, usd } from "./givenEstimates";

/** Periods of a calendar tax year from April 15 to April 15, as text: from, to, days, rate, divisor, rulings. */
function periodsOf(taxYear: number): readonly string[] {
  const first = day(`${String(taxYear)}-04-15`);
  const end = day(`${String(taxYear + 1)}-04-15`);
  return estimateRatePeriods(first, calendarTaxYear(taxYear), end, undefined, rulebook).map(
    ({ from, to, days, rate, divisor, sources }) =>
      [written(from), written(to), days, rate.toString(), divisor, sources.length].join(" ")
  );
}

// Rates: the quarterly revenue rulings. 26 U.S.C. 6621(b)(2)(B): for the penalty of section 6654, the rate that applies in the third
// month after the tax year applies to the first fifteen days of the fourth too.
describe("rate periods of the estimated tax penalty", () => {
  it("carry the first quarter's rate through April 15 where the second's is higher", () => {
    // 3% in the first quarter of 2022, 4% in the second
    expect(periodsOf(2021)).toEqual(["2021-04-15 2022-04-15 365 0.03 365 4"]);
    // 4% in the first quarter of 2018, 5% in the second
    expect(periodsOf(2017)).toEqual(["2017-04-15 2018-04-15 365 0.04 365 4"]);
  });

  it("carry it where the second quarter's is lower", () => {
    // 7% in the first quarter of 2026, 6% in the second
    expect(periodsOf(2025)).toEqual(["2025-04-15 2026-04-15 365 0.07 365 4"]);
  });

  it("cut where the rate changes and where the divisor does", () => {
    // 4% in the second quarter of 2022, 5%, 6%, then 7% in 2023
    expect(periodsOf(2022)).toEqual([
      "2022-04-15 2022-06-30 76 0.04 365 1",
      "2022-06-30 2022-09-30 92 0.05 365 1",
      "2022-09-30 2022-12-31 92 0.06 365 1",
      "2022-12-31 2023-04-15 105 0.07 365 1",
    ]);
    // 8% from October 2023 on, the year 2024 by 366
    expect(periodsOf(2023)).toEqual([
      "2023-04-15 2023-09-30 168 0.07 365 2",
      "2023-09-30 2023-12-31 92 0.08 365 1",
      "2023-12-31 2024-04-15 106 0.08 366 1",
    ]);
  });

  it("count from the end of a fiscal year: its third month's rate through the fifteenth of the fourth", () => {
    const year = fiscalTaxYear(day("2025-06-30"));
    if (!year) throw new RangeError("June 30 ends a fiscal year");
    // 7% in the third quarter of 2025; the fourth's is the same, so the days alone tell
    const periods = estimateRatePeriods(
      day("2024-10-15"),
      year,
      day("2025-10-15"),
      undefined,
      rulebook
    );
    expect(
      periods.map(({ from, to, rate, divisor }) => [
        written(from),
        written(to),
        rate.toString(),
        divisor,
      ])
    ).toEqual([
      ["2024-10-15", "2024-12-31", "0.08", 366],
      ["2024-12-31", "2025-10-15", "0.07", 365],
    ]);
    const rise = fiscalTaxYear(day("2022-03-31"));
    if (!rise) throw new RangeError("March 31 ends a fiscal year");
    // 4% in the second quarter of 2022, 5% in the third
    const last = estimateRatePeriods(
      day("2021-07-15"),
      rise,
      day("2022-07-15"),
      undefined,
      rulebook
    ).at(-1);
    expect([last?.from, last?.to, last?.rate.toString()]).toEqual([
      day("2022-03-31"),
      day("2022-07-15"),
      "0.04",
    ]);
  });

  it("follow one another without a gap, each unlike its neighbour", () => {
    for (let taxYear = 2009; taxYear <= 2025; taxYear++) {
      const first = day(`${String(taxYear)}-04-15`);
      const end = day(`${String(taxYear + 1)}-04-15`);
      const periods = estimateRatePeriods(
        first,
        calendarTaxYear(taxYear),
        end,
        undefined,
        rulebook
      );
      expect(periods[0]?.from).toBe(first);
      expect(periods.at(-1)?.to).toBe(end);
      periods.slice(1).forEach((period, index) => {
        const before = periods[index];
        expect(period.from).toBe(before?.to);
        expect([period.rate.toString(), period.divisor]).not.toEqual([
          before?.rate.toString(),
          before?.divisor,
        ]);
      });
    }
  });

  // 26 CFR 301.6622-1(a) and Form 2210: 366 for days of a leap year. Both quarters bear 8%.
  it("carry the rate of a fiscal year's third month into January by the divisor of the new year", () => {
    const year = fiscalTaxYear(day("2023-09-30"));
    if (!year) throw new RangeError("no fiscal year");
    const found = estimateRatePeriods(
      day("2023-10-15"),
      year,
      day("2024-01-15"),
      undefined,
      rulebook
    );
    const shown = found.map(({ from, to, days, rate, divisor }) =>
      [written(from), written(to), days, rate.toString(), divisor].join(" ")
    );
    expect(shown).toEqual([
      "2023-10-15 2023-12-31 77 0.08 365",
      "2023-12-31 2024-01-15 15 0.08 366",
    ]);
  });

  it("refuse a quarter without a published rate, and name no ruling for an assumed one", () => {
    const year = calendarTaxYear(2026);
    const [first, end] = [day("2026-04-15"), day("2027-04-15")];
    expect(() => estimateRatePeriods(first, year, end, undefined, rulebook)).toThrow(
      NotInTableError
    );
    const assumed = usd("0.09");
    const last = estimateRatePeriods(first, year, end, assumed, rulebook).at(-1);
    expect([last?.from, last?.to, last?.rate.toString(), last?.sources]).toEqual([
      day("2026-12-31"),
      day("2027-04-15"),
      "0.09",
      [],
    ]);
  });
});
