import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ledger } from "../../../src/functions/account/ledger";
import { RUNS } from "../../calculation/arbitrary";
import { afterTable, answerOf, badInput, serial } from "../sheet";

interface Given {
  readonly taxYear?: number;
  readonly payments: unknown[][];
  readonly filedOn: string;
  readonly validExtension?: string;
  readonly assumedRate?: string;
  readonly noticeOn?: string;
}

/** LEDGER of a tax of 20,000, with an answer to whether the history is clean. */
function tableOf(given: Given, cleanHistory: unknown = "yes"): unknown[][] {
  const { taxYear = 2025, payments, filedOn, validExtension = "" } = given;
  const { assumedRate = "", noticeOn = "" } = given;
  const client = ["", "", assumedRate, "", "", "", noticeOn, ""] as const;
  return answerOf(() =>
    ledger(taxYear, 20_000, payments, filedOn, validExtension, ...client, cleanHistory)
  ) as unknown[][];
}

/** The rows that a clean history adds. */
const added = (given: Given): unknown[][] => tableOf(given).slice(tableOf(given, "").length);

const LATE: Given = {
  payments: [
    ["4/15/2026", 10_000],
    ["6/10/2026", 10_500],
  ],
  filedOn: "6/10/2026",
};
const AEP = "automatic exemption from penalty (AEP) or first-time abatement (FTA)";
const blank = (many: number): string[] => Array.from({ length: many }, () => "");

describe("LEDGER with a clean history", () => {
  // Section 6651(c)(1): two months of 4.5% and 0.5% of 10,000; sections 6601 and 6622: 56 days at 6%, compounded daily, on 10,000 and
  // on the penalty of 900. Of the 500 paid beyond the tax, 92.47 then pays the interest that remains.
  it("shows likely relief and what would remain below the last row", () => {
    expect(added(LATE).map((row) => row.slice(1, 10))).toEqual([
      [
        "Likely relief: both penalties and the interest on them",
        "",
        "",
        -900,
        -100,
        -8.32,
        -1008.32,
        "",
        "",
      ],
      ["Likely to remain: interest on the tax", "", 0, 0, 0, 92.47, 92.47, 0, 407.53],
      [`Relief is likely, but not certain: ${AEP}`, ...blank(8)],
      [
        "The failure-to-pay penalty continues until the tax is paid. Ask for relief after that",
        ...blank(8),
      ],
    ]);
    expect(added(LATE).map((row) => row[10])).toEqual([
      expect.stringMatching(/^IRS, Administrative penalty relief .*\(secondary source\)$/),
      "",
      expect.stringMatching(/^IRS, Administrative penalty relief /),
      expect.stringMatching(/^IRC section 6651\(a\)\(2\)/),
    ]);
  });

  it.each(["", "no", false, 0])("adds nothing for %j", (answer) => {
    const rows = tableOf(LATE, answer);
    expect(rows.at(-1)?.[0]).toBe(serial("2026-06-10"));
    expect(tableOf(LATE).slice(0, rows.length)).toEqual(rows);
  });

  // Section 6601(e)(2)(A): after a notice that is not paid in time, interest accrues on the failure-to-pay penalty as well.
  it("removes the interest on the failure-to-pay penalty after a notice, too", () => {
    const payments = [
      ["4/15/2026", 10_000],
      ["9/30/2026", 10_000],
    ];
    const withNotice = added({ payments, filedOn: "4/15/2026", noticeOn: "6/1/2026" });
    expect(withNotice[0]?.[6]).toBeLessThan(0);
    expect(added({ payments, filedOn: "4/15/2026" })[0]?.[6]).toBe(0);
  });

  it("says so where there is no penalty to remove, and adds nothing where there is no interest", () => {
    const presumed = [
      ["4/15/2026", 18_500],
      ["10/15/2026", 1500],
    ];
    const given = { payments: presumed, filedOn: "10/15/2026", validExtension: "yes" };
    expect(added(given).map((row) => row[1])).toEqual([
      "There is no penalty to remove. Interest on the tax remains",
    ]);
    expect(added({ payments: [["4/15/2026", 20_000]], filedOn: "4/15/2026" })).toEqual([]);
  });

  it("removes and leaves the last row to the cent", () => {
    const paid = fc.integer({ min: 0, max: 25_000 });
    const later = fc.integer({ min: serial("2026-04-16"), max: serial("2026-12-31") });
    fc.assert(
      fc.property(paid, paid, later, later, (onTime, late, paidOn, filedOn) => {
        const given = {
          payments: [
            ["4/15/2026", onTime],
            [paidOn, late],
          ],
          filedOn: filedOn as unknown as string,
        };
        const last = tableOf(given, "").at(-1) ?? [];
        const [relief, remaining] = added(given);
        if (relief?.[7] === undefined || remaining === undefined || relief[7] === "") return;
        const cents = (cell: unknown): number => Math.round(Number(cell) * 100);
        for (const column of [4, 5, 6, 7])
          expect(cents(remaining[column])).toBe(cents(last[column]) + cents(relief[column]));
        const balance = (row: readonly unknown[]): number => cents(row[8]) - cents(row[9]);
        expect(balance(remaining)).toBe(balance(last) + cents(relief[7]));
      }),
      { ...RUNS, numRuns: 50 }
    );
  });

  it("keeps one width", () => {
    expect(new Set(tableOf(LATE).map((row) => row.length))).toEqual(new Set([11]));
  });

  it("refuses a clean history that is not yes or no", () => {
    expect(tableOf(LATE, "clean")).toEqual(
      badInput('cleanHistory: "clean" is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0.')
    );
  });

  it("has no answer for a tax year whose relief is not in the rules", () => {
    const given = { taxYear: 2027, payments: [["4/20/2028", 1]], filedOn: "4/16/2028" };
    expect(tableOf({ ...given, assumedRate: "7%" })).toEqual(
      afterTable("clean-history-relief", "12/31/2027", "12/31/2026")
    );
  });
});
