import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gainTax } from "../../../src/calculation/liability/gainTax";
import { entryOn } from "../../../src/rules/datedTable";
import { rulebook } from "../../../src/rules/rulebook";
import { dollarsUpTo, HELD, RUNS, statuses, statusOf, usd, year, years } from "./givenTax";

const figuresOf = (taxYear: number) =>
  entryOn(rulebook.capitalGainRates, year(taxYear).firstDay).figures;
const tax = (taxYear: number, status: string, ordinary: number, gain: number): string =>
  gainTax(statusOf(status), usd(ordinary), usd(gain), figuresOf(taxYear)).toString();

/**
 * Tops of the 0% and the 15% rate. Rev. Proc. 2021-45 sec. 3.03, 2022-38 sec. 3.03, 2023-34 sec. 3.03, 2024-40 sec. 2.03, 2025-32
 * sec. 4.03 and the worksheet constants of their years; those of 2026 read in the official text, the others in transcriptions.
 */
const TOPS: Readonly<Record<number, Readonly<Record<string, readonly [number, number]>>>> = {
  2022: {
    single: [41675, 459750],
    joint: [83350, 517200],
    separate: [41675, 258600],
    head: [55800, 488500],
  },
  2023: {
    single: [44625, 492300],
    joint: [89250, 553850],
    separate: [44625, 276900],
    head: [59750, 523050],
  },
  2024: {
    single: [47025, 518900],
    joint: [94050, 583750],
    separate: [47025, 291850],
    head: [63000, 551350],
  },
  2025: {
    single: [48350, 533400],
    joint: [96700, 600050],
    separate: [48350, 300000],
    head: [64750, 566700],
  },
  2026: {
    single: [49450, 545500],
    joint: [98900, 613700],
    separate: [49450, 306850],
    head: [66200, 579600],
  },
};
const columns = HELD.flatMap((taxYear) =>
  Object.entries(TOPS[taxYear] ?? {}).map(([status, [zero, fifteen]]) => ({
    taxYear,
    status,
    zero,
    fifteen,
  }))
);

describe("the edges of the gain rates", () => {
  it("are held for five years in four columns", () => {
    expect(columns).toHaveLength(20);
  });

  it.each(columns)("$taxYear $status: 0 to $zero, 15% to $fifteen, then 20%", (column) => {
    const { taxYear, status, zero, fifteen } = column;
    expect(tax(taxYear, status, 0, zero)).toBe("0");
    expect(tax(taxYear, status, 0, zero + 100)).toBe("15");
    expect(tax(taxYear, status, zero - 1, 1)).toBe("0");
    expect(tax(taxYear, status, zero, 100)).toBe("15");
    expect(tax(taxYear, status, fifteen - 100, 100)).toBe("15");
    expect(tax(taxYear, status, fifteen - 100, 200)).toBe("35");
    expect(tax(taxYear, status, fifteen, 100)).toBe("20");
  });

  it.each(HELD)("of %i are the joint ones for a surviving spouse", (taxYear) => {
    const [zero, fifteen] = TOPS[taxYear]?.["joint"] ?? [0, 0];
    expect(tax(taxYear, "survivor", zero - 100, 200)).toBe("15");
    expect(tax(taxYear, "survivor", fifteen - 100, 200)).toBe("35");
  });

  // Single 2025: 48,350 at 0, then 485,050 at 15% (72,757.50), then 66,600 at 20% (13,320).
  it("are all crossed by one large gain", () => {
    expect(tax(2025, "single", 0, 600_000)).toBe("86077.5");
  });
});

describe("any gain", () => {
  it("bears nothing, 15 or 20% of its last dollar, more the more income lies beneath", () => {
    fc.assert(
      fc.property(
        years,
        statuses,
        dollarsUpTo(700_000),
        dollarsUpTo(700_000),
        (taxYear, status, ordinary, gain) => {
          const { figures } = entryOn(rulebook.capitalGainRates, taxYear.firstDay);
          const owed = gainTax(status, ordinary, gain, figures);
          const more = gainTax(status, ordinary, gain.plus(1), figures).minus(owed).toNumber();
          expect(more).toBeGreaterThanOrEqual(0);
          expect(more).toBeLessThanOrEqual(0.2);
          const higher = gainTax(status, ordinary.plus(1), gain, figures);
          expect(higher.greaterThanOrEqualTo(owed)).toBe(true);
          expect(owed.lessThanOrEqualTo(gain.times("0.2"))).toBe(true);
        }
      ),
      RUNS
    );
  });
});
