/**
 * Compares the income tax and the alternative minimum tax of 2,000 returns with the capital gain worksheet and Form 6251, line by line
 * (liabilityWorksheets.ts), in whole numbers, with figures copied by hand and without code from src.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FilingStatus } from "../../src/calculation/filingStatus";
import { alternativeMinimumTax } from "../../src/calculation/liability/alternativeMinimumTax";
import { incomeTax } from "../../src/calculation/liability/incomeTax";
import { calendarTaxYear } from "../../src/calculation/taxYear";
import { Decimal } from "../../src/money/dollars";
import { rulebook } from "../../src/rules/rulebook";
import derived from "../fixtures/published/liability/gain-worksheet.json";
import { figuresOf, type Column } from "./liabilityFigures";
import { DOLLAR } from "./liabilityTaxTable";
import { form6251, gainWorksheet, type Figured } from "./liabilityWorksheets";

const COLUMNS: Readonly<Record<FilingStatus, Column>> = {
  single: "single",
  joint: "joint",
  separate: "separate",
  head: "head",
  survivor: "joint",
};
const STATUSES = Object.keys(COLUMNS) as FilingStatus[];

interface Return extends Figured {
  readonly status: FilingStatus;
}

/** Many amounts are a few dollars from a limit of a bracket, a capital gain rate or the minimum tax. */
const anyReturn: fc.Arbitrary<Return> = fc
  .record({
    year: fc.integer({ min: 2022, max: 2026 }),
    status: fc.constantFrom(...STATUSES),
    size: fc.constantFrom(4_000, 110_000, 700_000, 2_000_000),
    income: fc.double({ min: 0, max: 1, noNaN: true }),
    dividends: fc.constantFrom(0, 0, 0.01, 0.2, 0.6, 1.2),
    gain: fc.constantFrom(0, 0, 0.05, 0.3, 0.8, 1.1),
    amtAdjustments: fc.constantFrom(0, 10_000, 31_500, 200_000, 900_000),
    edge: fc.integer({ min: 0, max: 11 }),
    beside: fc.constantFrom(-100, -1, 0, 1, 2_500),
  })
  .map((drawn) => {
    const column = COLUMNS[drawn.status];
    const { tops, gainTops, exemption, shrinksAbove } = figuresOf(drawn.year).columns[column];
    const edges = [...tops, ...gainTops, shrinksAbove, exemption];
    const edge = edges[drawn.edge];
    const dollars =
      edge === undefined ? Math.floor(drawn.size * drawn.income) : Math.max(0, edge + drawn.beside);
    const share = (part: number): number => Math.floor(dollars * part) * 100;
    return {
      year: drawn.year,
      status: drawn.status,
      column,
      taxableIncome: dollars * 100,
      qualifiedDividends: share(drawn.dividends),
      netGain: share(drawn.gain),
      amtAdjustments: drawn.amtAdjustments * 100,
    };
  });

const dollars = (cents: number): Decimal => new Decimal(cents).div(100);
const preferentialOf = (given: Return): Decimal =>
  dollars(given.qualifiedDividends + given.netGain);

/** Hundredths of a cent. */
const fine = (tax: Decimal): number => Number(tax.times(DOLLAR).toFixed(3));

/** Above this amount, section 55(d)(3) adds income for married filing separately, which only the instructions of the form describe. */
function isPlain(given: Return): boolean {
  const { columns, centsPerDollar } = figuresOf(given.year);
  const { exemption, shrinksAbove } = columns.separate;
  const gone = (shrinksAbove + (exemption * 100) / centsPerDollar) * 100;
  return given.status !== "separate" || given.taxableIncome + given.amtAdjustments <= gone;
}

const RUNS = { numRuns: 2_000, seed: 4868 };

describe("the independent calculation itself", () => {
  it.each(derived.cases)("gives the lines of the capital gain worksheet of $case", (one) => {
    const lines = gainWorksheet({
      year: one.taxYear,
      column: one.status as Column,
      amtAdjustments: 0,
      taxableIncome: Number(one.taxableIncome) * 100,
      qualifiedDividends: 0,
      netGain: Number(one.preferentialIncome) * 100,
    });
    for (const [line, amount] of Object.entries(one.lines)) {
      expect((lines[Number(line)] ?? NaN) / DOLLAR).toBe(Number(amount));
    }
  });
});

describe("2,000 returns of 2022 to 2026", () => {
  it("have the income tax of the capital gain worksheet", () => {
    const seen = { preferentialIncome: 0, ordinary: 0, beyondIncome: 0, allRates: 0 };
    fc.assert(
      fc.property(anyReturn, (given) => {
        const lines = gainWorksheet(given);
        const tax = incomeTax(
          calendarTaxYear(given.year),
          given.status,
          dollars(given.taxableIncome),
          preferentialOf(given),
          rulebook
        );
        expect(fine(tax)).toBe(lines[25]);
        if ((lines[4] ?? 0) > 0) seen.preferentialIncome++;
        else seen.ordinary++;
        if ((lines[4] ?? 0) > (lines[1] ?? 0)) seen.beyondIncome++;
        if ((lines[17] ?? 0) > 0 && (lines[20] ?? 0) > 0) seen.allRates++;
      }),
      RUNS
    );
    // Each kind of return occurs often enough.
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(100);
  });

  it("have the alternative minimum tax of Form 6251", () => {
    const seen = { due: 0, dueOnGain: 0, none: 0, exemptionShrunk: 0 };
    fc.assert(
      fc.property(anyReturn.filter(isPlain), (given) => {
        const lines = form6251(given);
        const tax = alternativeMinimumTax(
          {
            taxYear: calendarTaxYear(given.year),
            status: given.status,
            taxableIncome: dollars(given.taxableIncome),
            amtAdjustments: dollars(given.amtAdjustments),
            preferentialIncome: preferentialOf(given),
          },
          rulebook
        );
        expect(fine(tax)).toBeCloseTo(lines[11] ?? NaN, 2);
        if ((lines[11] ?? 0) === 0) seen.none++;
        else if ((lines[13] ?? 0) > 0) seen.dueOnGain++;
        else seen.due++;
        const { exemption } = figuresOf(given.year).columns[given.column];
        if ((lines[5] ?? 0) < exemption * 100) seen.exemptionShrunk++;
      }),
      RUNS
    );
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(100);
  });
});
