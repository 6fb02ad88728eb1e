/** Compares the income tax with full tables and schedules in whole numbers (liabilityTaxTable.ts), without code from src. */
import { describe, expect, it } from "vitest";
import { incomeTax } from "../../src/calculation/liability/incomeTax";
import { calendarTaxYear } from "../../src/calculation/taxYear";
import { Decimal } from "../../src/money/dollars";
import { rulebook } from "../../src/rules/rulebook";
import printed from "../fixtures/published/liability/tax-table.json";
import type { Column } from "./liabilityFigures";
import { bySchedule, DOLLAR, taxTable } from "./liabilityTaxTable";

const COLUMNS: readonly Column[] = ["single", "joint", "separate", "head"];
const YEARS = [2022, 2023, 2024, 2025, 2026];
const each = YEARS.flatMap((year) => COLUMNS.map((column) => ({ year, column })));

const tax = (year: number, column: Column, income: number | string): number =>
  incomeTax(
    calendarTaxYear(year),
    column,
    new Decimal(income),
    new Decimal(0),
    rulebook
  ).toNumber();

describe("the independent calculation itself", () => {
  it.each(printed.cases)("prints the row $case", ({ taxYear, atLeast, lessThan, tax: row }) => {
    for (const column of COLUMNS) {
      const found = taxTable(taxYear, column).find((one) => one.atLeast === Number(atLeast));
      expect(found).toEqual({
        atLeast: Number(atLeast),
        lessThan: Number(lessThan),
        tax: Number(row[column]),
      });
    }
  });
});

describe.each(each)("the table of $year, $column", ({ year, column }) => {
  it("has 2,062 rows with the same tax at both ends of each", () => {
    const rows = taxTable(year, column);
    // The printed tables of 2025 and 2026 have as many.
    expect(rows).toHaveLength(2_062);
    const different = rows.filter(
      (row) =>
        tax(year, column, row.atLeast) !== row.tax ||
        tax(year, column, row.lessThan - 0.01) !== row.tax
    );
    expect(different).toEqual([]);
  });

  it("continues above $100,000 with the schedule", () => {
    for (let income = 100_000; income < 1_200_000; income += 3_333) {
      expect(tax(year, column, income)).toBe(bySchedule(year, column, income * 100) / DOLLAR);
    }
  });
});
