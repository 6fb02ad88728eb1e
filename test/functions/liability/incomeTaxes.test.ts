import { describe, expect, it } from "vitest";
import { incomeTax, minimumTax } from "../../../src/functions/liability/incomeTaxes";
import printed from "../../fixtures/published/liability/tax-table.json";
import { afterTable, badInput, beforeTable, down, inCell } from "../sheet";

const NO_STATUS = "Enter single, joint, separate, head or survivor, or S, MFJ, MFS, HOH or QSS.";

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
      [beforeTable("income-tax-rates", "1/1/2021", "1/1/2022")],
      [""],
      [badInput("taxableIncome: -1 is negative. Enter zero or a positive dollar amount.")],
    ]);
  });

  it.each([
    [[2025, "widow", 1], badInput(`filingStatus: "widow" is not a filing status. ${NO_STATUS}`)],
    [[2025, "", 1], badInput(`filingStatus: The cell is blank. ${NO_STATUS}`)],
    [
      [2025, "single", null],
      badInput("taxableIncome: The cell is blank. Enter a dollar amount, or 0 if there is none."),
    ],
    [
      [2025, "single", "much"],
      badInput(
        'taxableIncome: "much" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'
      ),
    ],
    [
      [2025, "single", 1, -1],
      badInput("preferentialIncome: -1 is negative. Enter zero or a positive dollar amount."),
    ],
    [[2027, "single", 1], afterTable("income-tax-rates", "1/1/2027", "12/31/2026")],
  ])("%j is refused", (values, refusal) => {
    expect(inCell(incomeTax, ...values)).toEqual(refusal);
  });

  it("takes the figures of the year in which a fiscal year begins", () => {
    // July 2025 to June 2026: 1,192.50 + 12% of 100 = 1,204.50
    expect(inCell(incomeTax, "2026-06-30", "single", 12_000)).toBe(1_205);
    expect(inCell(incomeTax, "2027-01-31", "single", 12_000)).toBe(1_203);
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
      beforeTable("alternative-minimum-tax", "1/1/2021", "1/1/2022")
    );
    expect(inCell(minimumTax, 2025, "single", 1, null)).toEqual(
      badInput("amtAdjustments: The cell is blank. Enter a dollar amount, or 0 if there is none.")
    );
  });
});
