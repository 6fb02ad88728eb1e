import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, written } from "../../../src/calendar/calendarDate";
import {
  estimatedTaxPenalty,
  type EstimatedTaxInput,
} from "../../../src/calculation/estimatedTax/estimatedTaxPenalty";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import { day, fiscalYear, paid, usd } from "../given";
import { anyEstimates, lineTexts, RUNS } from "./givenEstimates";

const lines = (
  begins: string,
  postponementEnds: string,
  payments: readonly ReturnType<typeof paid>[],
  taxYear = 2025
) =>
  estimatedTaxPenalty(
    {
      taxYear: calendarTaxYear(taxYear),
      requiredAnnualPayment: usd(4_000),
      withholding: usd(0),
      payments,
      postponement: { begins: day(begins), ends: day(postponementEnds) },
    },
    rulebook
  ).lines.map(({ installment, amount, from, to, days, penalty: addition }) =>
    [installment, amount.toFixed(), written(from), written(to), days, addition.toFixed(2)].join(" ")
  );

// The wildfires of January 2025 in Los Angeles County: estimates due April 15, June 16 and September 15, 2025 by October 15, 2025
// (firm copies of the release of the Internal Revenue Service); 26 U.S.C. 7508A(a)(2): the time before does not count.
describe("installments moved by a disaster postponement", () => {
  const fires = ["2025-01-07", "2025-10-15"] as const;

  it("are on time on the day to which they were postponed", () => {
    expect(lines(...fires, [paid("2025-10-15", 3_000), paid("2026-01-15", 1_000)])).toEqual([]);
  });

  it("count from that day where they are late, the later installment from its own", () => {
    // 1,000 x 182/365 x 7%; 1,000 x 90/365 x 7%
    expect(lines(...fires, [])).toEqual([
      "1 1000 2025-10-15 2026-04-15 182 34.90",
      "2 1000 2025-10-15 2026-04-15 182 34.90",
      "3 1000 2025-10-15 2026-04-15 182 34.90",
      "4 1000 2026-01-15 2026-04-15 90 17.26",
    ]);
  });

  it("have the first quarter's rate even where only the days of April are left", () => {
    // invented postponement through April 5, 2026: ten days at the 7% of the first quarter, not the 6% of the second
    expect(lines("2025-01-07", "2026-04-05", [])).toEqual(
      [1, 2, 3, 4].map((number) => `${String(number)} 1000 2026-04-05 2026-04-15 10 1.92`)
    );
  });

  it("count the second from its own day if a postponement ends within the weekend after it", () => {
    // invented postponement of the first installment through Sunday, June 16, 2024; the second, of Saturday, was on time on Monday
    // 1,000 x 198/366 x 8%; 1,000 x 199/366 x 8%
    const found = lines("2024-04-15", "2024-06-16", [], 2024);
    expect(found.filter((line) => / 2024-06-1\d /.test(line))).toEqual([
      "1 1000 2024-06-16 2024-12-31 198 43.28",
      "2 1000 2024-06-15 2024-12-31 199 43.50",
    ]);
  });
});

// 26 U.S.C. 6654(g)(1): an equal part is deemed paid on each due date. 26 CFR 301.7508A-1(b)(4): a postponement does not move it.
describe("withholding in a year with a postponement", () => {
  const given: EstimatedTaxInput = {
    taxYear: calendarTaxYear(2025),
    requiredAnnualPayment: usd(8_000),
    withholding: usd(4_000),
    payments: [paid("2025-09-15", 2_000), paid("2026-01-15", 1_000)],
  };
  const postponement = { begins: day("2025-06-01"), ends: day("2025-08-20") };

  it("counts in June, so that an April underpayment ends in June with or without the postponement", () => {
    const lineOfApril = "1 1000 2025-04-15 2025-06-15 61 0.07 365 11.70";
    const postponed = estimatedTaxPenalty({ ...given, postponement }, rulebook);
    expect(lineTexts(postponed)[0]).toBe(lineOfApril);
    expect(lineTexts(estimatedTaxPenalty(given, rulebook))[0]).toBe(lineOfApril);
    expect(postponed.amount.toFixed(2)).toBe("62.33");
  });

  it("counts in May 2020 for a fiscal year, although Notice 2020-23 postponed that installment to July", () => {
    // 1,000 x 61/366 x 5%
    const fiscal = { ...given, taxYear: fiscalYear("2020-11-30"), payments: [] };
    expect(lineTexts(estimatedTaxPenalty(fiscal, rulebook)).slice(0, 2)).toEqual([
      "1 1000 2020-03-15 2020-05-15 61 0.05 366 8.33",
      expect.stringMatching(/^2 1000 2020-07-15 /),
    ]);
  });

  // 26 U.S.C. 7508A(a)(2): the days of the period are disregarded in determining an addition to tax.
  it("never makes the penalty of any year larger", () => {
    const lengths = fc.integer({ min: 0, max: 300 });
    fc.assert(
      fc.property(
        anyEstimates,
        fc.integer({ min: 60, max: 400 }),
        lengths,
        (input, from, length) => {
          const begins = addDays(input.taxYear.firstDay, from);
          const period = { begins, ends: addDays(begins, length) };
          const postponed = estimatedTaxPenalty({ ...input, postponement: period }, rulebook);
          const { amount } = estimatedTaxPenalty(input, rulebook);
          expect(postponed.amount.lessThanOrEqualTo(amount)).toBe(true);
        }
      ),
      { ...RUNS, numRuns: 1000 }
    );
  });
});
