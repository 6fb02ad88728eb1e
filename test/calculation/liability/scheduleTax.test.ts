import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { scheduleTax } from "../../../src/calculation/liability/scheduleTax";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/liability/rate-schedules.json";
import { dollarsUpTo, HELD, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

const tax = (taxYear: number, status: string, income: string | number): string =>
  scheduleTax(year(taxYear), statusOf(status), usd(income), rulebook).toString();

const CENT = usd("0.01");
const PERCENTS = [10, 12, 22, 24, 32, 35, 37];

/**
 * The tops of the six lower brackets. Rev. Proc. 2021-45 sec. 3.01, 2022-38 sec. 3.01, 2023-34 sec. 3.01, 2024-40 sec. 2.01, 2025-32
 * sec. 4.01; those of 2026 read in the official text, the others in transcriptions.
 */
const TOPS: Readonly<Record<number, Readonly<Record<string, readonly number[]>>>> = {
  2022: {
    single: [10275, 41775, 89075, 170050, 215950, 539900],
    joint: [20550, 83550, 178150, 340100, 431900, 647850],
    separate: [10275, 41775, 89075, 170050, 215950, 323925],
    head: [14650, 55900, 89050, 170050, 215950, 539900],
  },
  2023: {
    single: [11000, 44725, 95375, 182100, 231250, 578125],
    joint: [22000, 89450, 190750, 364200, 462500, 693750],
    separate: [11000, 44725, 95375, 182100, 231250, 346875],
    head: [15700, 59850, 95350, 182100, 231250, 578100],
  },
  2024: {
    single: [11600, 47150, 100525, 191950, 243725, 609350],
    joint: [23200, 94300, 201050, 383900, 487450, 731200],
    separate: [11600, 47150, 100525, 191950, 243725, 365600],
    head: [16550, 63100, 100500, 191950, 243700, 609350],
  },
  2025: {
    single: [11925, 48475, 103350, 197300, 250525, 626350],
    joint: [23850, 96950, 206700, 394600, 501050, 751600],
    separate: [11925, 48475, 103350, 197300, 250525, 375800],
    head: [17000, 64850, 103350, 197300, 250500, 626350],
  },
  2026: {
    single: [12400, 50400, 105700, 201775, 256225, 640600],
    joint: [24800, 100800, 211400, 403550, 512450, 768700],
    separate: [12400, 50400, 105700, 201775, 256225, 384350],
    head: [17700, 67450, 105700, 201750, 256200, 640600],
  },
};

const edges = HELD.flatMap((taxYear) =>
  Object.entries(TOPS[taxYear] ?? {}).flatMap(([status, tops]) =>
    tops.map((top, index) => ({ taxYear, status, top, index }))
  )
);

describe("the rate schedule as printed", () => {
  it.each(published.cases)(
    "$case ($source.origin)",
    ({ taxYear, status, taxableIncome, tax: owed }) => {
      expect(tax(taxYear, status, taxableIncome)).toBe(owed);
    }
  );

  it("is printed for the four years from 2023 on, in all four columns", () => {
    const seen = new Set(published.cases.map((one) => `${String(one.taxYear)} ${one.status}`));
    expect(seen.size).toBe(16);
  });
});

describe("at the edge of a bracket", () => {
  it("every year has six edges in each of four columns", () => {
    expect(edges).toHaveLength(5 * 4 * 6);
  });

  it.each(edges)("$taxYear $status $top the next dollar bears the next rate", (edge) => {
    const { taxYear, status, top, index } = edge;
    const at = usd(tax(taxYear, status, top));
    expect(
      at
        .minus(tax(taxYear, status, top - 1))
        .times(100)
        .toNumber()
    ).toBe(PERCENTS[index]);
    expect(
      usd(tax(taxYear, status, top + 1))
        .minus(at)
        .times(100)
        .toNumber()
    ).toBe(PERCENTS[index + 1]);
  });

  it.each(HELD)("%i gives a surviving spouse the joint column", (taxYear) => {
    for (const top of TOPS[taxYear]?.["joint"] ?? []) {
      expect(tax(taxYear, "survivor", top + 1)).toBe(tax(taxYear, "joint", top + 1));
      expect(tax(taxYear, "survivor", top + 1)).not.toBe(tax(taxYear, "single", top + 1));
    }
  });
});

describe("any income", () => {
  it("none bears no tax", () => {
    expect(tax(2025, "single", 0)).toBe("0");
  });

  it("pays on one more cent at least a tenth and at most 37% of it", () => {
    fc.assert(
      fc.property(years, statuses, dollarsUpTo(1_500_000), (taxYear, status, income) => {
        const less = scheduleTax(taxYear, status, income, rulebook);
        const more = scheduleTax(taxYear, status, income.plus(CENT), rulebook).minus(less);
        expect(more.greaterThanOrEqualTo("0.001")).toBe(true);
        expect(more.lessThanOrEqualTo("0.0037")).toBe(true);
      }),
      RUNS
    );
  });

  it("of a joint return pays twice what a separate one pays on half of it", () => {
    fc.assert(
      fc.property(years, dollarsUpTo(1_500_000), (taxYear, income) => {
        const joint = scheduleTax(taxYear, "joint", income, rulebook);
        const half = scheduleTax(taxYear, "separate", income.div(2), rulebook);
        expect(joint.equals(half.times(2))).toBe(true);
      }),
      RUNS
    );
  });
});
