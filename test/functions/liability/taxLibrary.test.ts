/**
 * Compares LIABILITY with an open policy library, Tax-Calculator 6.8.1 (CC0), on 1,000 invented filers. The library does not round to
 * dollars and does not use the Tax Table: each filer's tolerance says how much that may differ.
 */
import { describe, expect, it } from "vitest";
import library from "../../fixtures/library/total-tax.json";
import { fromCatalog } from "../fromCatalog";

const liability = fromCatalog("LIABILITY");

/**
 * Filers whom the library takes as dependents without earned income, IRC section 63(c)(5)(A): the list does not name amounts of 0, so
 * their earned income is missing from it.
 */
const DEPENDENTS_WITHOUT_EARNINGS = [20, 546];

const cases = library.cases.map((one, index) => ({
  ...one,
  index,
  rows: [
    ...Object.entries(one.items),
    ...(DEPENDENTS_WITHOUT_EARNINGS.includes(index) ? [["earned income of a dependent", 0]] : []),
  ],
}));

describe.each([2022, 2023, 2024, 2025, 2026])("the library's filers of %i", (year) => {
  it("have the same total tax, within the library's tolerance", () => {
    const compared = cases.filter(({ taxYear }) => taxYear === year);
    const differing = compared
      .map((one) => ({ ...one, answer: Number(liability(year, one.status, one.rows)) }))
      .filter(({ totalTax, answer, tolerance }) => !(Math.abs(answer - totalTax) <= tolerance));
    expect(differing).toEqual([]);
    expect(compared.length).toBeGreaterThan(190);
  });
});
