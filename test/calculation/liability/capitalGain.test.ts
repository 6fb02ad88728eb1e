import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { capitalGain } from "../../../src/calculation/liability/capitalGain";
import { rulebook } from "../../../src/rules/rulebook";
import { HELD, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

const netted = (taxYear: number, status: string, long: number, short: number) => {
  const gain = capitalGain(year(taxYear), statusOf(status), usd(long), usd(short), rulebook);
  return [gain.inIncome.toNumber(), gain.preferentialIncome.toNumber()];
};

// 26 U.S.C. 1222(11): net long-term gain beyond net short-term loss. Schedule D: the smaller of lines 15 and 16, nothing for a loss.
describe("gains and losses, long and short, in income and preferential", () => {
  it.each([
    [10_000, 0, [10_000, 10_000]],
    [10_000, 5_000, [15_000, 10_000]],
    [10_000, -4_000, [6_000, 6_000]],
    [10_000, -10_000, [0, 0]],
    [10_000, -12_000, [-2_000, 0]],
    [-4_000, 10_000, [6_000, 0]],
    [0, 10_000, [10_000, 0]],
    [0, 0, [0, 0]],
  ])("%d and %d", (long, short, expected) => {
    expect(netted(2025, "single", long, short)).toEqual(expected);
  });
});

// 26 U.S.C. 1211(b), figures from memory: 3,000, a separate filer 1,500.
describe("the loss that counts against other income", () => {
  it.each([
    ["single", 3_000],
    ["head", 3_000],
    ["joint", 3_000],
    ["survivor", 3_000],
    ["separate", 1_500],
  ])("of %s is at most %d", (status, most) => {
    for (const taxYear of HELD) {
      expect(netted(taxYear, status, 1 - most, 0)).toEqual([1 - most, 0]);
      expect(netted(taxYear, status, -most, 0)).toEqual([-most, 0]);
      expect(netted(taxYear, status, 0, -most - 1)).toEqual([-most, 0]);
      expect(netted(taxYear, status, -50_000, -50_000)).toEqual([-most, 0]);
    }
  });
});

describe("any gains", () => {
  it("are never preferential beyond what is in income or what is long-term", () => {
    const amount = fc.integer({ min: -200_000, max: 200_000 }).map(usd);
    fc.assert(
      fc.property(years, statuses, amount, amount, (taxYear, status, long, short) => {
        const { inIncome, preferentialIncome } = capitalGain(
          taxYear,
          status,
          long,
          short,
          rulebook
        );
        expect(preferentialIncome.isNegative()).toBe(false);
        expect(preferentialIncome.isZero() || preferentialIncome.lessThanOrEqualTo(inIncome)).toBe(
          true
        );
        expect(preferentialIncome.isZero() || preferentialIncome.lessThanOrEqualTo(long)).toBe(
          true
        );
        expect(inIncome.greaterThanOrEqualTo(long.plus(short))).toBe(true);
      }),
      RUNS
    );
  });
});
