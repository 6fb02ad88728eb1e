import { describe, expect, it } from "vitest";
import { annualized } from "../../../src/functions/estimatedTax/annualized";
import {
  estPenalty,
  estPenaltyLines,
} from "../../../src/functions/estimatedTax/estimatedTaxPenalty";
import { afterTable, answerOf, badInput, beforeTable, NONE, serial } from "../sheet";

const HEADINGS = ["", "Jan-Mar", "Jan-May", "Jan-Aug", "Jan-Dec"];
const BLOCK = [
  HEADINGS,
  ["AGI", 10_000, 20_000, 60_000, 120_000],
  ["net self-employment earnings", 5_000, 10_000, 20_000, 30_000],
  ["wages", 0, 0, 10_000, 20_000],
];
const LATE = [HEADINGS, ["AGI", 0, 0, 0, 120_000]];

const table = annualized(2025, "single", BLOCK, 20_000);
const line = (number: number, rows: readonly unknown[][] = table): readonly unknown[] =>
  rows.find((row) => row[0] === number) ?? [];

describe("ANNUALIZED", () => {
  it("has a column for each period and the source at the end", () => {
    expect(table[0]).toEqual([
      "Line",
      "Item",
      "January–March",
      "January–May",
      "January–August",
      "January–December",
      "Source",
    ]);
    expect(new Set(table.map((row) => row.length))).toEqual(new Set([7]));
  });

  it("has the lines of the form in their order", () => {
    const numbers = table.slice(1).map(([number]) => number);
    const left = [5, 12, 32, 34];
    const all = Array.from({ length: 36 }, (_, index) => index + 1);
    expect(numbers).toEqual(all.filter((number) => !left.includes(number)));
  });

  // Computed from Form 2210, Schedule AI (2018 to 2021), with Rev. Proc. 2024-40 brackets, the Tax Table and Pub. L. 119-21's 15,750.
  it("calculates each line", () => {
    expect(line(3).slice(2, 6)).toEqual([40_000, 48_000, 90_000, 120_000]);
    expect(line(7).slice(2, 6)).toEqual([15_750, 15_750, 15_750, 15_750]);
    expect(line(13).slice(2, 6)).toEqual([24_250, 32_250, 74_250, 104_250]);
    // 0.1 x 11,925 + 0.12 to 48,475 + 0.22 to 103,350 + 0.24; below 100,000 on the middle of a row of 50
    expect(line(14).slice(2, 6)).toEqual([2_675, 3_635, 11_255, 17_867]);
    // 5,000 x .612, 10,000 x .3672, 20,000 x .2295, 30,000 x .153
    expect(line(36).slice(2, 6)).toEqual([3_060, 3_672, 4_590, 4_590]);
    expect(line(19).slice(2, 6)).toEqual([5_735, 7_307, 15_845, 22_457]);
    expect(line(20).slice(2, 6)).toEqual([0.225, 0.45, 0.675, 0.9]);
    expect(line(21).slice(2, 6)).toEqual([1_290, 3_288, 10_695, 20_211]);
    expect(line(24).slice(2, 6)).toEqual([5_000, 5_000, 5_000, 5_000]);
    expect(line(25).slice(2, 6)).toEqual([0, 3_710, 6_712, 4_305]);
    // 20,000 − 10,695 is less than 20,211 − 10,695
    expect(line(27).slice(2, 6)).toEqual([1_290, 1_998, 7_407, 9_305]);
    expect(line(29).slice(2, 6)).toEqual([44_025, 73_375, 117_400, 176_100]);
  });

  it("names the sources of the figures", () => {
    expect(line(7).at(-1)).toMatch(/^Rev\. Proc\. 2025-32/);
    expect(line(20).at(-1)).toBe(
      "Form 2210 instructions, Schedule AI, line 20; IRC section 6654(d)(2)(C)(ii)"
    );
    expect(line(3).at(-1)).toBe("");
  });

  it("ends before the installments where the required annual payment is blank or 0", () => {
    for (const none of [undefined, null, "", 0]) {
      const rows = annualized(2025, "single", LATE, none);
      expect(rows.at(-1)?.[0]).toBe(21);
    }
  });

  it("has no Part II without net self-employment earnings", () => {
    expect(annualized(2025, "single", LATE, 1_000).at(-1)?.[0]).toBe(27);
  });

  // Form 2210 instructions for Form 1040-NR: skip column (a); one half on line 24 in column (b).
  it("has three columns for a nonresident", () => {
    const rows = annualized(2025, "single", BLOCK, 20_000, "nonresident");
    expect(rows[0]?.slice(2, 5)).toEqual(["January–May", "January–August", "January–December"]);
    expect(line(7, rows).slice(2, 5)).toEqual([0, 0, 0]);
    expect(line(20, rows).slice(2, 5)).toEqual([0.45, 0.675, 0.9]);
    expect(line(24, rows).slice(2, 5)).toEqual([10_000, 5_000, 5_000]);
  });

  it("does not answer for a year whose rates are not covered", () => {
    expect(answerOf(() => annualized(2021, "single", LATE))).toEqual(
      beforeTable("income-tax-rates", "1/1/2021", "1/1/2022")
    );
    expect(answerOf(() => annualized(2027, "single", LATE))).toEqual(
      afterTable("income-tax-rates", "1/1/2027", "12/31/2026")
    );
  });

  it("refuses a filing status or periods that are blank", () => {
    expect(answerOf(() => annualized(2025, "", LATE))).toMatchObject({ code: "#VALUE!" });
    expect(answerOf(() => annualized(2025, "single", NONE))).toEqual(
      badInput(
        "periods: The cell is blank. Select the headings and the labeled rows of the four periods."
      )
    );
  });
});

/** The arguments of ESTPENALTY: paidOn, currentYearTax, farmerOrFisherman, filerType, filedOn, filingStatus and periods. */
interface More {
  readonly paidOn?: unknown;
  readonly currentYearTax?: unknown;
  readonly farmer?: unknown;
  readonly filerType?: unknown;
  readonly filedOn?: unknown;
  readonly status?: unknown;
  readonly periods?: unknown[][];
}
const rest = (more: More) =>
  [
    more.paidOn,
    undefined,
    more.currentYearTax,
    more.farmer,
    undefined,
    undefined,
    more.filerType,
    more.filedOn,
    more.status,
    more.periods,
  ] as const;
const PAID = [
  ["4/15/2025", 1_290],
  ["6/15/2025", 1_998],
  ["9/15/2025", 7_407],
  ["1/15/2026", 9_305],
];

describe("ESTPENALTY and ESTPENALTYLINES with periods", () => {
  it("charge nothing where each annualized installment is paid", () => {
    expect(estPenalty(2025, 20_000, 0, PAID, ...rest({}))).toBeGreaterThan(100);
    const given = rest({ status: "single", periods: BLOCK });
    expect(estPenalty(2025, 20_000, 0, PAID, ...given)).toBe(0);
    expect(estPenaltyLines(2025, 20_000, 0, PAID, ...given)[1]?.[0]).toBe("No penalty");
  });

  it("charge what is missing from an annualized installment", () => {
    const given = rest({ status: "single", periods: BLOCK });
    const short = [["4/15/2025", 1_290], ["6/15/2025", 998], ...PAID.slice(2)];
    // 1,000 of June until September 15, of September until January 15 and of January until April 15, at 7%
    const lines = estPenaltyLines(2025, 20_000, 0, short, ...given).slice(1, -1);
    expect(lines.map((row) => [row[0], row[1], row[4], row[6]])).toEqual([
      [2, 1_000, 92, 17.64],
      [3, 1_000, 122, 23.4],
      [4, 1_000, 90, 17.26],
    ]);
    expect(estPenalty(2025, 20_000, 0, short, ...given)).toBe(58.3);
  });

  it("follow three installments of a nonresident", () => {
    const given = rest({ status: "single", periods: LATE, filerType: "nonresident" });
    expect(estPenalty(2025, 20_000, 0, [["1/15/2026", 20_000]], ...given)).toBe(0);
  });

  it("charge nothing below $1,000 after withholding, and say so", () => {
    const given = rest({ currentYearTax: 8_999, status: "single", periods: BLOCK });
    expect(estPenalty(2025, 20_000, 8_000, NONE, ...given)).toBe(0);
    expect(estPenaltyLines(2025, 20_000, 8_000, NONE, ...given).slice(1)).toEqual([
      [
        "No penalty: small balance after withholding",
        "",
        "",
        "",
        "",
        "",
        0,
        "IRC section 6654(e)(1)",
      ],
    ]);
  });

  it.each([
    [
      rest({ status: "single", periods: BLOCK, farmer: "yes" }),
      "periods: Farmers and fishermen have one installment, which is not annualized. Leave periods blank, or correct farmerOrFisherman.",
    ],
    [
      rest({ periods: BLOCK }),
      "filingStatus: The cell is blank, but periods is entered. Enter a filing status such as single or MFJ.",
    ],
    [
      rest({ filedOn: "12/31/2025" }),
      "filedOn: 12/31/2025 is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system.",
    ],
  ])("refuse %#", (given, sentence) => {
    expect(answerOf(() => estPenalty(2025, 20_000, 0, NONE, ...given))).toEqual(badInput(sentence));
    expect(answerOf(() => estPenaltyLines(2025, 20_000, 0, NONE, ...given))).toEqual(
      badInput(sentence)
    );
  });

  it("do not answer with periods for a year whose rates are not covered", () => {
    const given = rest({ status: "single", periods: LATE });
    expect(answerOf(() => estPenalty(2020, 20_000, 0, NONE, ...given))).toEqual(
      beforeTable("income-tax-rates", "1/1/2020", "1/1/2022")
    );
    expect(estPenalty(2020, 20_000, 0, NONE)).toBeGreaterThan(0);
  });
});

// 26 U.S.C. 6654(h), (i)(1)(D). January 31, 2026 is a Saturday.
describe("ESTPENALTY and ESTPENALTYLINES after an early return", () => {
  const lines = (more: More) => estPenaltyLines(2025, 8_000, 0, NONE, ...rest(more)).slice(1);

  it("have no fourth installment, and name the date", () => {
    const early = { paidOn: "1/30/2026", filedOn: "2/2/2026" };
    expect(lines({ paidOn: "1/30/2026" }).map(([installment]) => installment)).toContain(4);
    const rows = lines(early);
    expect(rows.map(([installment]) => installment)).toEqual([
      1,
      2,
      3,
      "No penalty on the last installment: filed and paid by 2/2/2026",
      expect.stringMatching(/^Not calculated/),
    ]);
    expect(rows[3]?.at(-1)).toBe("IRC section 6654(h)");
    const sum = rows.reduce((total, row) => total + Math.round(Number(row[6]) * 100), 0);
    expect(estPenalty(2025, 8_000, 0, NONE, ...rest(early))).toBe(sum / 100);
  });

  it("charge the fourth where the tax was not paid by then", () => {
    const unpaid = lines({ filedOn: serial("2026-01-20") });
    expect(unpaid.map(([installment]) => installment)).toContain(4);
  });

  it("charge farmers and fishermen nothing by March 1", () => {
    const rows = lines({ farmer: "yes", paidOn: "3/2/2026", filedOn: "3/2/2026" });
    expect(rows.map((row) => [row[0], row[6], row[7]])).toEqual([
      ["No penalty", 0, ""],
      [
        "No penalty on the last installment: filed and paid by 3/2/2026",
        "",
        "IRC section 6654(i)(1)(D)",
      ],
    ]);
  });
});
