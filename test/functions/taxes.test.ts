import { describe, expect, it } from "vitest";
import {
  extraMedicare,
  incomeTax,
  minimumTax,
  netInvestmentTax,
  seTax,
} from "../../src/functions/taxes";
import printed from "../fixtures/published/liability/tax-table.json";
import { badInput, down, inCell, notHeld } from "./sheet";

const NO_STATUS = "give single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS";

describe("INCOMETAX", () => {
  // Tax Table 2025 and its seam as printed or derived; gain worksheet 2025 as derived.
  it.each([
    [[2025, "single", 99_999.99], 16_909],
    [[2025, "single", 100_000], 16_914],
    [[2025, "MFJ", 97_000, 300], 11_174],
    [["2025", " hoh ", "$17,000"], 1_703],
    [[2025, "qss", 96_950], 11_163],
    [[2025, "MFS", 57_000, null], 7_460],
    [[2025, "s", 0], 0],
  ])("%j is %d", (values, tax) => {
    expect(inCell(incomeTax, ...values)).toBe(tax);
  });

  it("answers a column, single cells repeating, a bad row with its own error", () => {
    const rows = printed.cases.filter(({ taxYear }) => taxYear === 2025);
    const incomes = down(...rows.map(({ atLeast }) => Number(atLeast)));
    expect(incomeTax([[2025]], [["head"]], incomes)).toEqual(
      rows.map(({ tax }) => [Number(tax.head)])
    );
    expect(incomeTax(down(2025, 2021, "", 2025), [["S"]], down(48_500, 48_500, "", -1))).toEqual([
      [5_590],
      [
        notHeld(
          "Income tax rates and the income up to which each runs: no figure for 2021-01-01; held only from 2022-01-01 on (rules/income-tax-rates.json)"
        ),
      ],
      [""],
      [badInput("taxableIncome: -1 is negative; give dollars, zero or more")],
    ]);
  });

  it.each([
    [[2025, "widow", 1], badInput(`status: "widow" is no filing status; ${NO_STATUS}`)],
    [[2025, "", 1], badInput(`status: is empty; ${NO_STATUS}`)],
    [
      [2025, "single", null],
      badInput("taxableIncome: is empty; give dollars, 0 if there is nothing"),
    ],
    [[2025, "single", "much"], badInput('taxableIncome: "much" is not an amount in dollars')],
    [[2025, "single", 1, -1], badInput("preferential: -1 is negative; give dollars, zero or more")],
    [
      [2027, "single", 1],
      notHeld(
        "Income tax rates and the income up to which each runs: no figure for 2027-01-01; known only through 2026-12-31 (rules/income-tax-rates.json)"
      ),
    ],
  ])("%j is refused", (values, refusal) => {
    expect(inCell(incomeTax, ...values)).toEqual(refusal);
  });

  it("takes the figures of the year in which a fiscal year begins", () => {
    // July 2025 to June 2026: 1,192.50 + 12% of 100 = 1,204.50
    expect(inCell(incomeTax, "2026-06-30", "single", 12_000)).toBe(1_205);
    expect(inCell(incomeTax, "2027-01-31", "single", 12_000)).toBe(1_203);
  });
});

describe("SETAX", () => {
  it.each([
    [[2025, 100_000], 14_129.55],
    [[2023, 200_000], 25_221.1],
    [[2025, 100_000, 180_000], 2_678.15],
    [[2023, 400], 0],
    [[2025, "(5,000)"], 0],
  ])("%j is %d", (values, tax) => {
    expect(inCell(seTax, ...values)).toBe(tax);
  });

  it("answers a column", () => {
    expect(seTax([[2025]], down(100_000, "x", 433))).toEqual([
      [14_129.55],
      [badInput('profit: "x" is not an amount in dollars')],
      [0],
    ]);
  });

  it.each([
    [[2025, null], badInput("profit: is empty; give dollars, 0 if there is nothing")],
    [[2025, 1, -1], badInput("wages: -1 is negative; give dollars, zero or more")],
    [
      [2027, 1],
      notHeld(
        "Self-employment tax: no figure for 2027-01-01; known only through 2026-12-31 (rules/self-employment-tax.json)"
      ),
    ],
  ])("%j is refused", (values, refusal) => {
    expect(inCell(seTax, ...values)).toEqual(refusal);
  });
});

describe("EXTRAMEDICARE", () => {
  it.each([
    [[2025, "single", 225_000], 225],
    [[2025, "single", 150_000, 100_000], 381.15],
    [[2025, "QSS", 220_000], 180],
    [[2025, "joint", 220_000, 0], 0],
    // 26 U.S.C. 1402(b)(2): 92.35% of 433 is below 400 and no self-employment income
    [[2025, "single", 300_000, 433], 900],
  ])("%j is %d", (values, tax) => {
    expect(inCell(extraMedicare, ...values)).toBe(tax);
  });

  it("answers a column, and refuses a year before 2022", () => {
    expect(extraMedicare(down(2025, 2021), [["single"]], [[225_000]])).toEqual([
      [225],
      [
        notHeld(
          "Self-employment tax: no figure for 2021-01-01; held only from 2022-01-01 on (rules/self-employment-tax.json)"
        ),
      ],
    ]);
    expect(inCell(extraMedicare, 2025, "single", "")).toEqual(
      badInput("wages: is empty; give dollars, 0 if there is nothing")
    );
  });
});

describe("NETINVESTMENTTAX", () => {
  it.each([
    [[2025, "joint", 40_000, 270_000], 760],
    [[2025, "survivor", 30_000, 260_000], 380],
    [[2025, "single", -40_000, 900_000], 0],
    [[2025, "single", 40_000, "(1,000)"], 0],
  ])("%j is %d", (values, tax) => {
    expect(inCell(netInvestmentTax, ...values)).toBe(tax);
  });

  it("answers a column, and refuses what it cannot read", () => {
    const tax = netInvestmentTax([[2025]], down("S", "MFS"), [[20_000]], down(210_000, 130_000));
    expect(tax).toEqual([[380], [190]]);
    expect(inCell(netInvestmentTax, 2025, "S", 1, null)).toEqual(
      badInput("adjustedGrossIncome: is empty; give dollars, 0 if there is nothing")
    );
  });
});

describe("MINIMUMTAX", () => {
  it.each([
    [[2025, "single", 150_000, 15_750], 0],
    // 350,000 - 88,100 at 28% less 4,782; regular 25,067
    [[2025, "single", 134_250, 215_750], 43_483],
    // Form 6251 line 13: the gain counts whole where it is larger than taxable income
    [[2025, "single", 984_250, 15_750, 1_000_000], 3_150],
  ])("%j is %d", (values, tax) => {
    expect(inCell(minimumTax, ...values)).toBe(tax);
  });

  it("answers a column, and refuses a year that is not held", () => {
    expect(minimumTax([[2025]], [["single"]], [[134_250]], down(15_750, 215_750))).toEqual([
      [0],
      [43_483],
    ]);
    expect(inCell(minimumTax, 2021, "single", 1, 1)).toEqual(
      notHeld(
        "Alternative minimum tax: no figure for 2021-01-01; held only from 2022-01-01 on (rules/alternative-minimum-tax.json)"
      )
    );
    expect(inCell(minimumTax, 2025, "single", 1, null)).toEqual(
      badInput("addedBack: is empty; give dollars, 0 if there is nothing")
    );
  });
});
