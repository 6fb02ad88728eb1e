import { describe, expect, it } from "vitest";
import { estimatedTaxPenalty } from "../../../src/calculation/estimatedTax/estimatedTaxPenalty";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import { day, paid, usd } from "../given";

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
      postponement: { begins: day(begins), postponementEnds: day(postponementEnds) },
    },
    rulebook
  ).lines.map(({ installment, amount, from, to, days, penalty: addition }) =>
    [installment, amount.toFixed(), from, to, days, addition.toFixed(2)].join(" ")
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
