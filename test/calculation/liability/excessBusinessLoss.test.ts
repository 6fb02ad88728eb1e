import { describe, expect, it } from "vitest";
import { excessBusinessLoss } from "../../../src/calculation/liability/excessBusinessLoss";
import { rulebook } from "../../../src/rules/rulebook";
import { statusOf, usd, year } from "./givenTax";

const excess = (taxYear: number, status: string, income: number): number =>
  excessBusinessLoss(year(taxYear), statusOf(status), usd(income), rulebook).toNumber();

/**
 * Thresholds of 26 U.S.C. 461(l)(3)(A)(ii)(II): Rev. Proc. 2021-45, 2022-38, 2023-34 section 3.32, 2024-40 section 2.32 and 2025-32
 * section 4.31, as reported. A joint return has twice the amount; a separate filer has the whole of it.
 */
describe.each([
  [2022, 270_000],
  [2023, 289_000],
  [2024, 305_000],
  [2025, 313_000],
  [2026, 256_000],
])("in %i", (taxYear, limit) => {
  it.each(["single", "separate", "head", "survivor"])("a loss of %s above the limit", (status) => {
    expect(excess(taxYear, status, -limit)).toBe(0);
    expect(excess(taxYear, status, -limit - 1)).toBe(1);
    expect(excess(taxYear, status, -1_000_000)).toBe(1_000_000 - limit);
  });

  it("a joint return deducts twice as much", () => {
    expect(excess(taxYear, "joint", -2 * limit)).toBe(0);
    expect(excess(taxYear, "joint", -2 * limit - 1)).toBe(1);
  });

  it("income has no excess", () => {
    for (const income of [0, 1, 5_000_000]) expect(excess(taxYear, "single", income)).toBe(0);
  });
});
