import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  estPenalty,
  estPenaltyLines,
} from "../../../src/functions/estimatedTax/estimatedTaxPenalty";
import { afterTable, answerOf, badInput, NONE, serial } from "../sheet";

describe("ESTPENALTY and ESTPENALTYLINES", () => {
  const payments = [
    [serial("2026-01-15"), 1000],
    ["", ""],
    ["2025-06-16", "$500"],
  ];

  it("take a blank range as no payment", () => {
    expect(estPenalty(2025, 8000, 4000, [["", ""]])).toBe(estPenalty(2025, 8000, 4000, NONE));
  });

  it("charge nothing where withholding is the required payment", () => {
    expect(estPenalty(2025, 8000, 8000, NONE)).toBe(0);
    expect(estPenaltyLines(2025, 8000, 8000, NONE).slice(1)).toEqual([
      ["No penalty", "", "", "", "", "", 0, ""],
    ]);
  });

  it("show a line for each part of an installment, whatever the order of the payments", () => {
    const [headings, ...rows] = estPenaltyLines(2025, 4000, 0, payments);
    const lines = rows.slice(0, -1);
    const ruling: unknown = expect.stringMatching(/^Rev\. Rul\. .* to Rev\. Rul\. /);
    expect(headings).toEqual([
      "Installment",
      "Amount",
      "From",
      "Through",
      "Days",
      "Rate",
      "Penalty",
      "Source",
    ]);
    // 500 of the first on June 16, 500 on January 15, then 500 of the second; the rest on April 15 (7% throughout)
    expect(lines).toEqual([
      [1, 500, serial("2025-04-15"), serial("2025-06-16"), 62, 0.07, 5.95, ruling],
      [1, 500, serial("2025-04-15"), serial("2026-01-15"), 275, 0.07, 26.37, ruling],
      [2, 500, serial("2025-06-15"), serial("2026-01-15"), 214, 0.07, 20.52, ruling],
      [2, 500, serial("2025-06-15"), serial("2026-04-15"), 304, 0.07, 29.15, ruling],
      [3, 1000, serial("2025-09-15"), serial("2026-04-15"), 212, 0.07, 40.66, ruling],
      [4, 1000, serial("2026-01-15"), serial("2026-04-15"), 90, 0.07, 17.26, ruling],
    ]);
    expect(estPenalty(2025, 4000, 0, payments)).toBe(139.91);
  });

  it("say so where the rate is assumed", () => {
    const lines = estPenaltyLines(2026, 4000, 0, NONE, undefined, "9%").slice(1);
    expect(lines.at(-2)?.slice(5)).toEqual([0.09, 22.19, "assumed rate, not published"]);
    expect(lines[0]?.[7]).toMatch(/^Rev\. Rul\. /);
  });

  it("stop on the day the rest is paid, blank or zero being none", () => {
    const whole = estPenalty(2025, 4000, 0, NONE);
    for (const none of [undefined, null, "", 0, "2026-10-15"]) {
      expect(estPenalty(2025, 4000, 0, NONE, none)).toBe(whole);
    }
    // 7% on 1,000 for 335, 274, 182 and 60 days; to April 15 for 365, 304, 212 and 90
    expect(estPenalty(2025, 4000, 0, NONE, "2026-03-16")).toBe(163.21);
    expect(whole).toBe(186.22);
  });

  it("charge nothing below $1,000 after withholding, if the year's tax is given", () => {
    const given = (currentYearTax: unknown): unknown =>
      estPenalty(2025, 8100, 8000, NONE, undefined, undefined, currentYearTax);
    // 26 U.S.C. 6654(e)(1): less than $1,000
    expect(given("8,999.99")).toBe(0);
    expect(given(9000)).toBe(given(""));
    expect(given(9000)).toBeGreaterThan(0);
  });

  it("add up, lines to charge", () => {
    const cents = fc.integer({ min: 0, max: 1_000_000 }).map((whole) => whole / 100);
    const day = fc.integer({ min: serial("2024-01-01"), max: serial("2025-06-30") });
    const rows = fc.array(fc.tuple(day, cents), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(
        cents,
        cents,
        rows,
        fc.option(day, { nil: null }),
        (required, withheld, paid, rest) => {
          const lines = estPenaltyLines(2024, required, withheld, paid, rest).slice(1);
          const sum = lines.reduce((total, line) => total + Math.round(Number(line[6]) * 100), 0);
          expect(estPenalty(2024, required, withheld, paid, rest)).toBe(sum / 100);
          const turned = [...paid].reverse();
          expect(estPenalty(2024, required, withheld, turned, rest)).toBe(sum / 100);
        }
      ),
      { numRuns: 100, seed: 4868, endOnFailure: true }
    );
  });

  it.each([
    [
      [2025, "", 0, NONE],
      "requiredAnnualPayment: The cell is blank. Enter a dollar amount, or 0 if there is none.",
    ],
    [
      [2025, 4000, "", NONE],
      "withholding: The cell is blank. Enter a dollar amount, or 0 if there is none.",
    ],
    [
      [2025, 4000, 0, [["2024-12-31", 1]]],
      "payments row 1: 12/31/2024 is before the tax year begins on 1/1/2025. Check the date and the year.",
    ],
    [
      [2025, 4000, 0, NONE, "soon"],
      'paidOn: "soon" is not a date. Enter a date such as 4/15/2026.',
    ],
    [
      [2025, 4000, 0, NONE, "", 1.5],
      "assumedRate: 1.5 is not an annual rate. Enter a percent such as 7%, or the word latest.",
    ],
    [[[[2024], [2025]], 4000, 0, NONE], "taxYear: The range has 2 cells. Select one cell."],
  ] as const)("refuse %j", (values, sentence) => {
    const given = values as unknown as Parameters<typeof estPenalty>;
    expect(answerOf(() => estPenalty(...given))).toEqual(badInput(sentence));
    expect(answerOf(() => estPenaltyLines(...given))).toEqual(badInput(sentence));
  });

  it("refuse a day before the tax year for the rest, rather than take it for paid in time", () => {
    expect(answerOf(() => estPenalty(2025, 4000, 0, NONE, "2022-02-01"))).toEqual(
      badInput(
        "paidOn: 2/1/2022 is before the tax year begins on 1/1/2025. Check the date and the year."
      )
    );
  });

  it("do not answer for a year whose dates or rates are not held", () => {
    expect(answerOf(() => estPenalty(2008, 4000, 0, NONE))).toEqual({
      code: "#N/A",
      message:
        "Due dates of the estimated tax installments: There is no figure for 12/31/2008. The table begins on 12/31/2009 (rules/estimated-tax-installments.json). Use the official text of that time.",
    });
    expect(answerOf(() => estPenalty(2026, 4000, 0, NONE))).toEqual(
      afterTable("underpayment-rate", "1/1/2027", "12/31/2026")
    );
  });
});
