import fc from "fast-check";
import { FILING_STATUSES, type FilingStatus } from "../../../src/calculation/filingStatus";
import type { ReturnItem, ReturnItems } from "../../../src/calculation/liability/returnItems";
import { calendarTaxYear, type TaxYear } from "../../../src/calculation/taxYear";
import { Decimal } from "../../../src/money/dollars";

/** Dollars, or a rate, written as text or number. */
export const usd = (written: string | number): Decimal => new Decimal(written);

/** A calendar tax year. */
export const year = calendarTaxYear;

/** Tax years whose figures are held. */
export const HELD = [2022, 2023, 2024, 2025, 2026] as const;

/** Years next to those held, which every calculation refuses. */
export const NOT_HELD = [2021, 2027] as const;

/** A filing status from a fixture's word. */
export function statusOf(word: string): FilingStatus {
  const known = FILING_STATUSES.find((status) => status === word);
  if (!known) throw new RangeError(`"${word}" is no filing status`);
  return known;
}

/** What is known of a return, written as numbers. */
export type Written = Readonly<Partial<Record<ReturnItem, string | number>>>;

/** What is known of a return, read. */
export function known(written: Written): ReturnItems {
  const read = Object.entries(written).map(([name, amount]) => [name, usd(amount)] as const);
  return Object.fromEntries(read);
}

/** The seed is fixed so that the same suite always asks the same questions. */
export const RUNS = { numRuns: 200, seed: 4868 };

/** Any tax year held. */
export const years: fc.Arbitrary<TaxYear> = fc.constantFrom(...HELD).map(calendarTaxYear);

/** Any filing status. */
export const statuses: fc.Arbitrary<FilingStatus> = fc.constantFrom(...FILING_STATUSES);

/** Whole dollars from zero up, the small as often as the large. */
export function dollarsUpTo(most: number): fc.Arbitrary<Decimal> {
  const within = (top: number) => fc.integer({ min: 0, max: Math.min(top, most) });
  return fc.oneof(within(4_000), within(110_000), within(most)).map(usd);
}
