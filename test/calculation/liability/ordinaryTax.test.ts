import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FILING_STATUSES } from "../../../src/calculation/filingStatus";
import { ordinaryTax } from "../../../src/calculation/liability/ordinaryTax";
import { scheduleTax } from "../../../src/calculation/liability/scheduleTax";
import { rulebook } from "../../../src/rules/rulebook";
import seam from "../../fixtures/published/liability/tax-on-income.json";
import table from "../../fixtures/published/liability/tax-table.json";
import worksheet from "../../fixtures/published/liability/computation-worksheet.json";
import { dollarsUpTo, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

const tax = (taxYear: number, status: string, income: string | number): string =>
  ordinaryTax(year(taxYear), statusOf(status), usd(income), rulebook).toString();

const CENT = usd("0.01");

describe("the Tax Table as printed", () => {
  it.each(table.cases)("$case, every column ($source.origin)", (row) => {
    const inside = [row.atLeast, usd(row.lessThan).minus(CENT).toString()];
    for (const status of FILING_STATUSES) {
      for (const income of inside) {
        expect([status, income, tax(row.taxYear, status, income)]).toEqual([
          status,
          income,
          row.tax[status],
        ]);
      }
    }
  });

  it("the row above a printed one may differ from it, so the end of a band is not in it", () => {
    const row = table.cases.find(({ taxYear, atLeast }) => taxYear === 2025 && atLeast === "96950");
    expect(row?.lessThan).toBe("97000");
    expect(tax(2025, "joint", "97000")).not.toBe(row?.tax.joint);
  });
});

describe("the Tax Computation Worksheet as printed", () => {
  it.each(worksheet.cases)("$case ($source.origin)", (row) => {
    const by = (income: string): string =>
      usd(income).times(row.percent).div(100).minus(row.subtract).toString();
    const ends = [
      row.lowerEndIncluded ? row.over : usd(row.over).plus(CENT).toString(),
      row.notOver ?? usd(row.over).times(2).toString(),
    ];
    for (const income of ends) expect(tax(row.taxYear, row.status, income)).toBe(by(income));
    if (row.notOver !== null) {
      const beyond = usd(row.notOver).plus(1).toString();
      expect(tax(row.taxYear, row.status, beyond)).not.toBe(by(beyond));
    }
  });
});

describe("the seam of table and worksheet", () => {
  it.each(seam.cases)("$case ($source.origin)", ({ taxYear, status, taxableIncome, tax: owed }) => {
    expect(tax(taxYear, status, taxableIncome)).toBe(owed);
  });

  // Facts on the liability, section 5.1: one cent across 100,000 jumps from 16,909 to 16,914.
  it("is one cent below 100,000", () => {
    expect(tax(2025, "single", "99999.99")).toBe("16909");
    expect(tax(2025, "single", "100000")).toBe("16914");
  });

  it("is not followed where a test scenario enters 10% flat", () => {
    const conflict = seam.cases.find(({ source }) => source.origin === "conflict");
    expect(conflict?.refused?.tax).toBe("162");
    expect(tax(2025, "joint", "1620")).not.toBe("162");
  });
});

// Tax Table 2025 and 2023 as printed: [0,5) [5,15) [15,25), then 25 wide to 3,000, then 50 wide. Amounts at 10%, half up.
describe("the bands of the table", () => {
  it.each([
    ["0", "0"],
    ["4.99", "0"],
    ["5", "1"],
    ["14.99", "1"],
    ["15", "2"],
    ["24.99", "2"],
    ["25", "4"],
    ["49.99", "4"],
    ["50", "6"],
    ["2974.99", "296"],
    ["2975", "299"],
    ["2999.99", "299"],
    ["3000", "303"],
    ["3049.99", "303"],
    ["3050", "308"],
  ])("on %s the tax of 2025 is %s for everyone", (income, owed) => {
    for (const status of FILING_STATUSES) expect(tax(2025, status, income)).toBe(owed);
  });

  it("rounds half a dollar up", () => {
    // 12,000 to 12,050, single 2025: 1,192.50 + 12% of 100 = 1,204.50
    expect(tax(2025, "single", "12000")).toBe("1205");
  });
});

describe("any income", () => {
  it("pays whole dollars below 100,000, between the schedule's tax at the ends of its band", () => {
    fc.assert(
      fc.property(years, statuses, dollarsUpTo(99_999), (taxYear, status, income) => {
        const owed = ordinaryTax(taxYear, status, income, rulebook);
        const at = (amount: typeof income) => scheduleTax(taxYear, status, amount, rulebook);
        const width = income.lessThan(25) ? 10 : income.lessThan(3_000) ? 25 : 50;
        const low = income.minus(width).isNegative() ? usd(0) : income.minus(width);
        expect(owed.isInteger()).toBe(true);
        expect(owed.greaterThanOrEqualTo(at(low).floor())).toBe(true);
        expect(owed.lessThanOrEqualTo(at(income.plus(width)).ceil())).toBe(true);
      }),
      RUNS
    );
  });

  it("pays the schedule's tax from 100,000 on", () => {
    fc.assert(
      fc.property(years, statuses, dollarsUpTo(2_000_000), (taxYear, status, income) => {
        const over = income.plus(100_000);
        const owed = ordinaryTax(taxYear, status, over, rulebook);
        expect(owed.equals(scheduleTax(taxYear, status, over, rulebook))).toBe(true);
      }),
      RUNS
    );
  });

  it("never pays less for one more dollar", () => {
    fc.assert(
      fc.property(years, statuses, dollarsUpTo(1_000_000), (taxYear, status, income) => {
        const less = ordinaryTax(taxYear, status, income, rulebook);
        const more = ordinaryTax(taxYear, status, income.plus(1), rulebook);
        expect(more.greaterThanOrEqualTo(less)).toBe(true);
      }),
      RUNS
    );
  });
});
