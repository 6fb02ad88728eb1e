import fc from "fast-check";
import { addDays, daysBetween, type CalendarDate } from "../../src/calendar/calendarDate";
import { FILER_TYPES, type FilerType } from "../../src/calculation/filerType";
import { STATES, type State } from "../../src/calculation/state";
import { calendarTaxYear, type TaxYear } from "../../src/calculation/taxYear";
import { Decimal } from "../../src/money/dollars";
import { day } from "./given";

/** The seed is fixed so that the same suite always asks the same questions. */
export const RUNS = { numRuns: 200, seed: 4868 };

/** A date from one through another. */
export function daysFrom(first: string, last: string): fc.Arbitrary<CalendarDate> {
  const from = day(first);
  return fc.integer({ min: 0, max: daysBetween(from, day(last)) }).map((n) => addDays(from, n));
}

/** Dollars and cents from zero up. */
export function dollarsUpTo(most: number): fc.Arbitrary<Decimal> {
  return fc.integer({ min: 0, max: most * 100 }).map((cents) => new Decimal(cents).div(100));
}

/** Calendar tax years that the tables cover. */
export const heldTaxYears: fc.Arbitrary<TaxYear> = fc
  .integer({ min: 2009, max: 2027 })
  .map(calendarTaxYear);

/** Filer type. */
export const filers: fc.Arbitrary<FilerType> = fc.constantFrom(...FILER_TYPES);

/** Where they live; the two states with a holiday of their own as often as all others together. */
export const states: fc.Arbitrary<State | undefined> = fc.oneof(
  fc.constantFrom("ME" as State, "MA" as State),
  fc.constantFrom(undefined, ...STATES.map((code) => code as State))
);
