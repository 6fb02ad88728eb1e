import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { interest } from "../../../src/functions/penalty/interest";
import { effectiveRate, whatIf } from "../../../src/functions/account/comparison";
import { charges } from "../../../src/functions/penalty/charges";
import { answerOf, badInput, inCell, serial } from "../sheet";

describe("WHATIF", () => {
  const days = [["2026-06-15", serial("2026-10-15"), ""]];

  it("spills the days across and the extra payments down, blanks passed over", () => {
    const table = whatIf(2025, 20_000, 15_000, [[0], [""], ["$3,000"]], days, "yes");
    expect(table.map((row) => row[0])).toEqual(["Extra payment", 0, 3000]);
    expect(table[0]).toEqual(["Extra payment", serial("2026-06-15"), serial("2026-10-15")]);
    // 18,000 of 20,000 is 90%: interest on 2,000 alone, 61 days at 6% (26 CFR 301.6651-1(c)(3))
    const interest = 2000 * ((1 + 0.06 / 365) ** 61 - 1);
    expect(table[2]?.[1]).toBe(Number(interest.toFixed(2)));
    // 15,000 is not: two months on 5,000 at 0.5% too
    expect(table[1]?.[1]).toBe(Number((2.5 * interest + 50).toFixed(2)));
  });

  it("holds what CHARGES answers, cell by cell", () => {
    const extras = fc.array(
      fc.integer({ min: 0, max: 900_000 }).map((cents) => cents / 100),
      { minLength: 1, maxLength: 4 }
    );
    const someDays = fc.array(
      fc.integer({ min: serial("2025-01-01"), max: serial("2026-12-31") }),
      { minLength: 1, maxLength: 4 }
    );
    fc.assert(
      fc.property(
        extras,
        someDays,
        fc.boolean(),
        fc.constantFrom("", "out of country"),
        (extra, tried, extended, filerType) => {
          const [, ...rows] = whatIf(
            2024,
            20_000,
            12_345.67,
            extra.map((one) => [one]),
            [tried],
            extended,
            "ME",
            filerType
          );
          rows.forEach(([, ...cells], row) => {
            const paid = (1_234_567 + Math.round((extra[row] ?? NaN) * 100)) / 100;
            const across = tried.map((day) =>
              charges(
                [[2024]],
                [[20_000]],
                [[paid]],
                [[day]],
                [[day]],
                [[extended]],
                [["ME"]],
                [[filerType]]
              )
            );
            expect(cells).toEqual(across.map((answer) => answer[0]?.[0]));
          });
        }
      ),
      { numRuns: 100, seed: 4868 }
    );
  });

  it.each([
    ["extraPayments: The range is empty. Select at least one cell with a value.", [[""]], days],
    ["extraPayments: -1 is negative. Enter zero or a positive dollar amount.", [[-1]], days],
    ["dates: The range is empty. Select at least one cell with a value.", [[0]], [["", null]]],
    ['dates: "soon" is not a date. Enter a date such as 4/15/2026.', [[0]], [["soon"]]],
    [
      "dates column 2: 4/15/2025 is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system.",
      [[0]],
      [["2026-04-15", "2025-04-15"]],
    ],
  ])("refuses with: %s", (sentence, extra, tried) => {
    expect(answerOf(() => whatIf(2025, 20_000, 15_000, extra, tried))).toEqual(badInput(sentence));
  });
});

describe("EFFECTIVERATE", () => {
  it("is true to its example: 6.81%", () => {
    // 50.34 on 1,500 over 183 days
    const found = inCell(effectiveRate, 2025, 20_000, 18_500, "2026-10-15", "2026-10-15", "yes");
    expect(found).toBe(Number(((1 + 50.34 / 1500) ** (365 / 183) - 1).toFixed(4)));
    expect((Number(found) * 100).toFixed(2)).toBe("6.81");
  });

  // 26 U.S.C. 6651(a)(2): 0.5% of 10,000 for one month; 6601(a), 6621, 6622: one day of interest.
  it("leaves out what filing late causes: paid a day late, filed months later", () => {
    const day = Number(inCell(interest, 10_000, "2026-04-15", "2026-04-16"));
    const found = inCell(effectiveRate, 2025, 10_000, 0, "2026-04-16", "2026-09-30");
    expect(found).toBe(Number(((1 + (50 + day) / 10_000) ** 365 - 1).toFixed(4)));
    expect(inCell(effectiveRate, 2025, 10_000, 0, "2026-04-16", "2026-04-15")).toBe(found);
  });

  it("does not depend on the filing date without an extension", () => {
    const paidOn = fc.integer({ min: serial("2026-04-16"), max: serial("2026-12-01") });
    fc.assert(
      fc.property(paidOn, paidOn, (paid, filed) => {
        const rate = (filing: unknown) =>
          inCell(effectiveRate, 2025, 20_000, 12_000, paid, filing, "", "", "", "latest");
        expect(rate(filed)).toBe(rate("2026-04-15"));
      }),
      { numRuns: 100, seed: 4868 }
    );
  });

  it("is nothing where nothing was unpaid or nothing late", () => {
    expect(inCell(effectiveRate, 2025, 20_000, 20_000, "2026-10-15", "2026-10-15")).toBe(0);
    expect(inCell(effectiveRate, 2025, 20_000, 10_000, "2026-04-15", "2026-04-15")).toBe(0);
    // by the workday after a holiday and a weekend: April 18, 2022
    expect(inCell(effectiveRate, 2021, 20_000, 10_000, "2022-04-18", "2022-04-18")).toBe(0);
    expect(inCell(effectiveRate, 2021, 20_000, 10_000, "2022-04-19", "2022-04-18")).not.toBe(0);
  });

  it("answers a column, a bad row with its own error", () => {
    const answers = effectiveRate(
      [[2025]],
      [[20_000], ["much"]],
      [[20_000]],
      [["2026-10-15"]],
      [["2026-10-15"]]
    );
    expect(answers).toEqual([
      [0],
      [
        badInput(
          'totalTax: "much" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'
        ),
      ],
    ]);
  });
});
