import { describe, expect, it } from "vitest";
import { written } from "../../../src/calendar/calendarDate";
import { estimatedTaxPenalty } from "../../../src/calculation/estimatedTax/estimatedTaxPenalty";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import { day, paid, usd } from "../given";

interface Given {
  readonly payments?: readonly ReturnType<typeof paid>[];
  readonly withholding?: number;
  readonly farmerOrFisherman?: boolean;
  readonly postponement?: readonly [begins: string, ends: string];
}

const lines = ({ payments = [], withholding = 0, farmerOrFisherman, postponement }: Given) =>
  estimatedTaxPenalty(
    {
      taxYear: calendarTaxYear(2025),
      requiredAnnualPayment: usd(8_000),
      withholding: usd(withholding),
      payments,
      filerType: "nonresident",
      farmerOrFisherman,
      postponement: postponement && {
        begins: day(postponement[0]),
        ends: day(postponement[1]),
      },
    },
    rulebook
  ).lines.map(({ installment, amount, from, to, days, penalty }) =>
    [installment, amount.toFixed(), written(from), written(to), days, penalty.toFixed(2)].join(" ")
  );

// 26 U.S.C. 6654(j)(1), (2), (3)(A): June 15 (50 percent), September 15, January 15; (b)(2): to April 15. The rate is 7% throughout.
describe("nonresident aliens without wages subject to withholding", () => {
  it("have three installments, the first of half the required payment", () => {
    // 4,000 x 304/365 x 7%; 2,000 x 212/365 x 7%; 2,000 x 90/365 x 7%
    expect(lines({})).toEqual([
      "1 4000 2025-06-15 2026-04-15 304 233.21",
      "2 2000 2025-09-15 2026-04-15 212 81.32",
      "3 2000 2026-01-15 2026-04-15 90 34.52",
    ]);
  });

  it("have no penalty if half is paid in June and a quarter each in September and January", () => {
    // June 15, 2025, is a Sunday: section 7503.
    const payments = [paid("2025-06-16", 4000), paid("2025-09-15", 2000), paid("2026-01-15", 2000)];
    expect(lines({ payments })).toEqual([]);
    const short = [paid("2025-06-16", "3999.99"), paid("2025-09-15", "4000.01")];
    expect(lines({ payments: short })).toEqual(["1 0.01 2025-06-15 2025-09-15 92 0.00"]);
  });

  // Subsection (g)(1): an equal part on each due date.
  it("have a third of the withholding on each due date", () => {
    // 1,000 to September 15, 1,000 to January 15, 1,000 to April 15 of the first; 2,000 of each of the others
    expect(lines({ withholding: 3000 })).toEqual([
      "1 1000 2025-06-15 2025-09-15 92 17.64",
      "1 1000 2025-06-15 2026-01-15 214 41.04",
      "1 1000 2025-06-15 2026-04-15 304 58.30",
      "2 2000 2025-09-15 2026-04-15 212 81.32",
      "3 2000 2026-01-15 2026-04-15 90 34.52",
    ]);
  });

  it("leave nothing unpaid if withholding that is not divisible by three covers the year", () => {
    const open = lines({ withholding: 8000 }).filter((line) => line.includes("2026-04-15"));
    expect(open).toEqual([]);
  });

  // Subsection (i)(1): one installment, due January 15.
  it("have one installment in January as farmers and fishermen", () => {
    // 8,000 x 90/365 x 7%
    expect(lines({ farmerOrFisherman: true })).toEqual(["3 8000 2026-01-15 2026-04-15 90 138.08"]);
  });

  // 26 U.S.C. 7508A(a): the period is disregarded.
  it("have the first installment moved by a disaster postponement", () => {
    const [first] = lines({ postponement: ["2025-06-01", "2025-08-20"] });
    // 4,000 x 238/365 x 7%
    expect(first).toBe("1 4000 2025-08-20 2026-04-15 238 182.58");
  });
});
