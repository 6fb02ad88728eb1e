import { describe, expect, it } from "vitest";
import {
  extraMedicare,
  netInvestmentTax,
  seTax,
} from "../../../src/functions/liability/otherTaxes";
import { afterTable, badInput, beforeTable, down, inCell } from "../sheet";

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
      [
        badInput(
          'netProfit: "x" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'
        ),
      ],
      [0],
    ]);
  });

  it.each([
    [
      [2025, null],
      badInput("netProfit: The cell is blank. Enter a dollar amount, or 0 if there is none."),
    ],
    [
      [2025, 1, -1],
      badInput("socialSecurityWages: -1 is negative. Enter zero or a positive dollar amount."),
    ],
    [[2027, 1], afterTable("self-employment-tax", "1/1/2027", "12/31/2026")],
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
      [beforeTable("self-employment-tax", "1/1/2021", "1/1/2022")],
    ]);
    expect(inCell(extraMedicare, 2025, "single", "")).toEqual(
      badInput("medicareWages: The cell is blank. Enter a dollar amount, or 0 if there is none.")
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
      badInput("agi: The cell is blank. Enter a dollar amount, or 0 if there is none.")
    );
  });
});
