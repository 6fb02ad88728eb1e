import { describe, expect, it } from "vitest";
import { estimatedTaxPenalty } from "../../../src/calculation/estimatedTax/estimatedTaxPenalty";
import { calendarTaxYear, fiscalTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { penaltyOf, day, lineTexts, paid, usd } from "./givenEstimates";

/** Four installments of 1,000. */
const REQUIRED = 4000;

describe("the estimated tax penalty in other years and circumstances", () => {
  it("counts a fiscal year's installments from its own end", () => {
    // 6654(k): the corresponding months; a year ending June 30, 2025
    const taxYear = fiscalTaxYear(day("2025-06-30"));
    if (!taxYear) throw new RangeError("June 30 ends a fiscal year");
    const input = { taxYear, requiredAnnualPayment: usd(REQUIRED), withholding: usd(0) };
    const { lines } = estimatedTaxPenalty({ ...input, payments: [] }, rulebook);
    expect(lines.map(({ installment, from, to, days }) => [installment, from, to, days])).toEqual([
      [1, day("2024-10-15"), day("2024-12-31"), 77],
      [1, day("2024-12-31"), day("2025-10-15"), 288],
      [2, day("2024-12-15"), day("2024-12-31"), 16],
      [2, day("2024-12-31"), day("2025-10-15"), 288],
      [3, day("2025-03-15"), day("2025-10-15"), 214],
      [4, day("2025-07-15"), day("2025-10-15"), 92],
    ]);
  });

  it("counts from the end of a disaster postponement", () => {
    // California, postponement from January 7 to October 15, 2025 (CA-2025-01, as reported elsewhere)
    const postponement = { begins: day("2025-01-07"), ends: day("2025-10-15") };
    const input = {
      taxYear: calendarTaxYear(2025),
      requiredAnnualPayment: usd(REQUIRED),
      withholding: usd(0),
    };
    const on = (paidDay: string): readonly string[] =>
      lineTexts(
        estimatedTaxPenalty(
          { ...input, postponement, payments: [paid(paidDay, 3000)], paidOn: day("2026-01-15") },
          rulebook
        )
      );
    expect(on("2025-10-15")).toEqual([]);
    expect(on("2025-10-16")).toEqual([
      "1 1000 2025-10-15 2025-10-16 1 0.07 365 0.19",
      "2 1000 2025-10-15 2025-10-16 1 0.07 365 0.19",
      "3 1000 2025-10-15 2025-10-16 1 0.07 365 0.19",
    ]);
  });

  it("is refused for a year that the tables do not cover, and beyond the published rates", () => {
    const open = { requiredAnnualPayment: REQUIRED };
    expect(() => penaltyOf({ ...open, taxYear: 2008 })).toThrow(NotInTableError);
    expect(() => penaltyOf({ ...open, taxYear: 2028 })).toThrow(NotInTableError);
    expect(() => penaltyOf({ ...open, taxYear: 2026 })).toThrow(NotInTableError);
    const latest = penaltyOf({ ...open, taxYear: 2026, assumedRate: "latest" });
    const at7 = penaltyOf({ ...open, taxYear: 2026, assumedRate: usd("0.07") });
    expect(lineTexts(latest)).toEqual(lineTexts(at7));
    const at9 = penaltyOf({ ...open, taxYear: 2026, assumedRate: usd("0.09") });
    expect(at9.amount.greaterThan(at7.amount)).toBe(true);
    expect(at9.lines.at(-1)?.sources).toEqual([]);
  });

  it("needs no rate for days after everything was paid", () => {
    // the first installment of 2026 a month late, the others early: every day that counts lies in a published quarter
    const payments = ["2026-05-15", "2026-06-15", "2026-09-15", "2026-12-31"].map((on) =>
      paid(on, 1000)
    );
    expect(
      lineTexts(penaltyOf({ taxYear: 2026, requiredAnnualPayment: REQUIRED, payments }))
    ).toEqual(["1 1000 2026-04-15 2026-05-15 30 0.06 365 4.93"]);
  });
});
