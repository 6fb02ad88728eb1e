import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { taxableBenefits } from "../../../src/calculation/liability/taxableBenefits";
import { rulebook } from "../../../src/rules/rulebook";
import { dollarsUpTo, HELD, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

const taxable = (
  taxYear: number,
  status: string,
  benefits: number,
  other: number,
  livedApart = false
): number =>
  taxableBenefits(
    year(taxYear),
    statusOf(status),
    livedApart,
    usd(benefits),
    usd(other),
    rulebook
  ).toNumber();

/**
 * 26 U.S.C. 86(a) to (c): half of benefits and other income is held against a base of 25,000 (joint 32,000), then against 34,000
 * (44,000). A separate filer who lived with the spouse has no base.
 */
describe.each([
  ["single", 25_000, 34_000],
  ["head", 25_000, 34_000],
  ["survivor", 25_000, 34_000],
  ["joint", 32_000, 44_000],
])("benefits of 20,000 of %s", (status, base, adjusted) => {
  it("are free up to the base, count by half up to the adjusted base, then by 85%", () => {
    for (const taxYear of HELD) {
      const at = (provisional: number): number =>
        taxable(taxYear, status, 20_000, provisional - 10_000);
      expect(at(base - 1)).toBe(0);
      expect(at(base)).toBe(0);
      expect(at(base + 1)).toBe(0.5);
      expect(at(base + 1_000)).toBe(500);
      expect(at(adjusted)).toBe((adjusted - base) / 2);
      expect(at(adjusted + 100)).toBe((adjusted - base) / 2 + 85);
      expect(at(500_000)).toBe(17_000);
    }
  });
});

describe("small and separate", () => {
  it("half of the benefits is the most between the bases", () => {
    // single, 4,000 of benefits, 31,000 and half of them: 8,000 above the base
    expect(taxable(2025, "single", 4_000, 31_000)).toBe(2_000);
    // 2,000 above the adjusted base: 1,700 and the 2,000 of the lower step, held to 85% of the benefits
    expect(taxable(2025, "single", 4_000, 34_000)).toBe(3_400);
  });

  it("a separate filer includes 85% of the lesser of benefits, and half of them with other income", () => {
    expect(taxable(2025, "separate", 20_000, 0)).toBe(8_500);
    expect(taxable(2025, "separate", 20_000, 5_000)).toBe(12_750);
    expect(taxable(2025, "separate", 20_000, 10_000)).toBe(17_000);
    expect(taxable(2025, "separate", 20_000, 90_000)).toBe(17_000);
  });

  // 26 U.S.C. 86(c)(1)(C)(ii): no base only for a separate filer who does not live apart from the spouse at all times of the year.
  it("a separate filer who lived apart has the bases of a single filer, others keep theirs", () => {
    for (const taxYear of HELD) {
      for (const other of [15_000, 15_001, 24_000, 30_000, 90_000])
        expect(taxable(taxYear, "separate", 20_000, other, true)).toBe(
          taxable(taxYear, "single", 20_000, other)
        );
      expect(taxable(taxYear, "separate", 20_000, 15_000, true)).toBe(0);
      expect(taxable(taxYear, "joint", 20_000, 30_000, true)).toBe(
        taxable(taxYear, "joint", 20_000, 30_000)
      );
    }
  });

  // Joint: 30,000 and 40,000 are 55,000, 11,000 above the adjusted base: 9,350, with 6,000 of the lower step.
  it("both steps add up", () => {
    expect(taxable(2025, "joint", 30_000, 40_000)).toBe(15_350);
  });
});

describe("any benefits", () => {
  it("count by at most 85%, and no less for more other income", () => {
    fc.assert(
      fc.property(
        years,
        statuses,
        dollarsUpTo(60_000),
        dollarsUpTo(150_000),
        (taxYear, status, benefits, other) => {
          const of = (more: number) =>
            taxableBenefits(taxYear, status, false, benefits, other.plus(more), rulebook);
          const step = of(1).minus(of(0)).toNumber();
          expect(of(0).lessThanOrEqualTo(benefits.times("0.85"))).toBe(true);
          expect(step).toBeGreaterThanOrEqual(0);
          expect(step).toBeLessThanOrEqual(0.85);
        }
      ),
      RUNS
    );
  });
});
