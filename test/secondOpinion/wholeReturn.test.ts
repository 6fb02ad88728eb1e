/**
 * Compares total tax of random filers with an independent account of the whole return, line by line of the forms (returnIncome.ts,
 * wholeReturn.ts): 20,000 filers in the long run. The account imports nothing from src or rules.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { totalTax } from "../../src/calculation/liability/totalTax";
import { calendarTaxYear } from "../../src/calculation/taxYear";
import { Decimal } from "../../src/money/dollars";
import { rulebook } from "../../src/rules/rulebook";
import { runLength, tell } from "../soak/runLength";
import { FILER_CORNERS, filers } from "./randomFilers";
import type { Filer } from "./returnIncome";
import { wholeReturn } from "./wholeReturn";

const FILERS = runLength(1_500, 20_000);

function answerFor({ year, status, items }: Filer): number {
  const read = Object.entries(items).map(([name, amount]) => [name, new Decimal(amount)] as const);
  const given = Object.fromEntries(read);
  return totalTax(calendarTaxYear(year), status, given, rulebook).amount.toNumber();
}

describe("the independent account itself", () => {
  // Amounts worked by hand from the statute: IRC sections 461(l), 199A(e)(1) and 68, 56(b)(1), 170(p), 63(e).
  it.each<[string, number, Readonly<Record<string, number>>, number]>([
    ["an excess business loss", 2025, { wages: 1_000_000, businessProfit: -500_000 }, 212_583],
    [
      "business income beside section 68",
      2026,
      { businessProfit: 1_000_000, businessWages: 600_000, itemizedDeductions: 100_000 },
      273_179,
    ],
    [
      "the minimum tax beside section 68",
      2026,
      { wages: 1_000_000, minimumTaxItems: 500_000, itemizedDeductions: 100_000 },
      394_310,
    ],
    [
      "gifts of cash without itemizing",
      2026,
      { wages: 100_000, itemizedDeductions: 16_500, charitableCash: 1_000 },
      12_956,
    ],
    [
      "itemizing less than the standard deduction",
      2025,
      { wages: 200_000, minimumTaxItems: 400_000, itemizedDeductions: 14_000 },
      134_630,
    ],
  ])("works out %s of a single filer of %i", (_what, year, items, tax) => {
    expect(wholeReturn({ year, status: "single", items }).totalTax).toBe(tax);
  });
});

describe(`${String(FILERS)} filers of 2022 to 2026`, () => {
  it("have the total tax of the account, and reach every special case", () => {
    const reached = new Map(Object.keys(FILER_CORNERS).map((name) => [name, 0]));
    fc.assert(
      fc.property(filers, (filer) => {
        const whole = wholeReturn(filer);
        expect(answerFor(filer)).toBe(whole.totalTax);
        for (const [name, reaches] of Object.entries(FILER_CORNERS))
          if (reaches(whole)) reached.set(name, (reached.get(name) ?? 0) + 1);
      }),
      { numRuns: FILERS, seed: 4868 }
    );
    for (const [name, count] of reached) tell(`${String(count).padStart(7)}  ${name}`);
    expect([...reached].filter(([, count]) => count === 0)).toEqual([]);
  });
});
