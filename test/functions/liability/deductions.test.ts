import { describe, expect, it } from "vitest";
import {
  businessDeduction,
  childCredit,
  standardDeduction,
} from "../../../src/functions/liability/deductions";
import { afterTable, badInput, beforeTable, down, inCell } from "../sheet";

describe("STANDARDDEDUCTION", () => {
  // Charts of the Instructions for Form 1040, 2025 and 2023; 26 U.S.C. 63(c)(5) for a dependent.
  it.each([
    [[2025, "joint", 2], 34_700],
    [[2025, "MFS", 4], 22_150],
    [[2023, "HOH", 1], 22_650],
    [[2025, "single"], 15_750],
    [[2025, "single", 0], 15_750],
    [[2025, "single", "", ""], 15_750],
    [[2025, "single", undefined, 0], 15_750],
    [[2025, "single", undefined, 5_000, "yes"], 5_450],
    [[2025, "single", undefined, 0, "yes"], 1_350],
    [[2025, "single", undefined, "", "yes"], 1_350],
  ])("%j is %d", (values, deduction) => {
    expect(inCell(standardDeduction, ...values)).toBe(deduction);
  });

  it("answers a column", () => {
    expect(
      standardDeduction([[2025]], down("S", "MFJ", "HOH", "x"), [[1]])
        .flat()
        .slice(0, 3)
    ).toEqual([17_750, 33_100, 25_625]);
  });

  it.each([
    [
      [2025, "single", 5],
      badInput("ageBlindBoxes: 5 is not a valid number. Enter a whole number from 0 to 4."),
    ],
    [
      [2025, "single", 1.5],
      badInput("ageBlindBoxes: 1.5 is not a valid number. Enter a whole number from 0 to 4."),
    ],
    [
      [2025, "single", -1],
      badInput("ageBlindBoxes: -1 is not a valid number. Enter a whole number from 0 to 4."),
    ],
    [
      [2025, "single", 0, -1],
      badInput("dependentEarnedIncome: -1 is negative. Enter zero or a positive dollar amount."),
    ],
    [
      [2025, "single", 0, 5_000],
      badInput(
        "dependent: The cell is blank or no, but dependentEarnedIncome is 5000. Enter yes if the filer is claimed as a dependent, or clear the income."
      ),
    ],
    [[2021, "single"], beforeTable("standard-deduction", "1/1/2021", "1/1/2022")],
    [[2027, "single"], afterTable("standard-deduction", "1/1/2027", "12/31/2026")],
  ])("%j is refused", (values, refusal) => {
    expect(inCell(standardDeduction, ...values)).toEqual(refusal);
  });
});

describe("BUSINESSDEDUCTION", () => {
  // 26 CFR 1.199A-1(c)(3) examples; 26 U.S.C. 199A(b), (d)(3), (i).
  it.each([
    [[2025, "single", 50_000, 60_000], 10_000],
    [[2025, "single", 100_000, 81_000], 16_200],
    [[2025, "single", 100_000, 74_000, 7_000], 13_400],
    [[2025, "single", 100_000, 300_000, 0, 30_000], 15_000],
    [[2025, "single", 100_000, 300_000, 0, 20_000, 300_000], 12_500],
    [[2025, "single", 100_000, 300_000, 0, 30_000, 0, "no"], 15_000],
    [[2025, "single", 100_000, 300_000, 0, 30_000, 0, "yes"], 0],
    [[2026, "single", 1_000, 60_000], 400],
    [[2025, "single", 0, 60_000], 0],
  ])("%j is %d", (values, deduction) => {
    expect(inCell(businessDeduction, ...values)).toBe(deduction);
  });

  it("answers a column, a service business in its own row", () => {
    const service = down("no", "yes", "maybe");
    const none = null as unknown as unknown[][];
    expect(
      businessDeduction(
        [[2025]],
        [["S"]],
        [[100_000]],
        [[300_000]],
        none,
        [[30_000]],
        none,
        service
      )
    ).toEqual([
      [15_000],
      [0],
      [badInput('sstb: "maybe" is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0.')],
    ]);
  });

  it.each([
    [
      [2025, "single", -1, 1],
      badInput("qualifiedBusinessIncome: -1 is negative. Enter zero or a positive dollar amount."),
    ],
    [
      [2025, "single", 1, null],
      badInput("taxableIncome: The cell is blank. Enter a dollar amount, or 0 if there is none."),
    ],
    [[2027, "single", 1, 1], afterTable("business-income-deduction", "1/1/2027", "12/31/2026")],
  ])("%j is refused", (values, refusal) => {
    expect(inCell(businessDeduction, ...values)).toEqual(refusal);
  });
});

describe("CHILDCREDIT", () => {
  // 26 U.S.C. 24(a), (b), (h)
  it.each([
    [[2025, "joint", 2, 0, 410_001], 3_850],
    [[2025, "joint", 2], 4_400],
    [[2024, "single", 1, 1], 2_500],
    [[2026, "QSS", 2, 0, 300_000], 0],
    [[2025, "single", "", "1"], 500],
  ])("%j is %d", (values, credit) => {
    expect(inCell(childCredit, ...values)).toBe(credit);
  });

  it("answers a column", () => {
    expect(childCredit(down(2024, 2025), [["single"]], [[1]])).toEqual([[2_000], [2_200]]);
  });

  it.each([
    [
      [2025, "single", 1.5],
      badInput("qualifyingChildren: 1.5 is not a valid number. Enter a whole number from 0 to 30."),
    ],
    [
      [2025, "single", "two"],
      badInput(
        'qualifyingChildren: "two" is not a valid number. Enter a whole number from 0 to 30.'
      ),
    ],
    [
      [2025, "single", 1, 31],
      badInput("otherDependents: 31 is not a valid number. Enter a whole number from 0 to 30."),
    ],
    [[2021, "single", 1], beforeTable("child-tax-credit", "1/1/2021", "1/1/2022")],
  ])("%j is refused", (values, refusal) => {
    expect(inCell(childCredit, ...values)).toEqual(refusal);
  });
});
