import { bench, describe } from "vitest";
import { liability, liabilityLines } from "../../src/functions/liability/totalTax";
import { incomeTax } from "../../src/functions/liability/incomeTaxes";

const ROWS = 10_000;
const column = (cell: (row: number) => unknown): unknown[][] =>
  Array.from({ length: ROWS }, (_, row) => [cell(row)]);

/** A fictional return with every tax. */
const ITEMS: unknown[][] = [
  ["wages", 310_000],
  ["interest", 4_200],
  ["ordinary dividends", 9_000],
  ["qualified dividends", 7_500],
  ["long-term gain", 42_000],
  ["business profit", 65_000],
  ["rental income", -8_000],
  ["social security", 24_000],
  ["itemized deductions", 31_000],
  ["state and local taxes", 22_000],
  ["children under 17", 2],
  ["withholding", 71_000],
];

describe("one return", () => {
  bench("LIABILITY, twelve items", () => {
    liability(2025, "joint", ITEMS);
  });
  bench("LIABILITYLINES, twelve items", () => {
    liabilityLines(2025, "joint", ITEMS);
  });
});

describe(`${String(ROWS)} incomes, one call for the column`, () => {
  const incomes = column((row) => row * 37.5);
  const gains = column((row) => row * 11.25);
  bench("INCOMETAX", () => {
    incomeTax([[2025]], [["single"]], incomes);
  });
  bench("INCOMETAX with gains", () => {
    incomeTax([[2025]], [["single"]], incomes, gains);
  });
});
