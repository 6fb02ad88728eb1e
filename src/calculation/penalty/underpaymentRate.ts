import type { CalendarDate } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";

/** The rate taken for days beyond the last published quarter: a fraction a year, or the last published one carried on. */
export type AssumedRate = Decimal | "latest";

/** Published rates, and what to take where none is published yet. */
export interface InterestRates {
  readonly table: Rulebook["underpaymentRate"];
  /** Left out, a day beyond the published rates is refused. */
  readonly assumedRate?: AssumedRate | undefined;
}

/** The rate on a day; without a source where it is assumed. */
export interface UnderpaymentRate {
  readonly rate: Decimal;
  readonly source: Source | undefined;
}

/**
 * The underpayment rate in force on a day: the federal short-term rate plus three points, set for each quarter.
 *
 * @param day - The day interest accrues.
 * @param rates - rules/underpayment-rate.json and the assumed rate, if one is given.
 * @returns A fraction a year.
 * @throws NotInTableError for a day before the first rate held, or after the last when no rate is assumed.
 * @see 26 U.S.C. 6621(a)(2)
 *
 * @example
 * underpaymentRate("2026-04-16", { table }).rate //=> 0.06
 */
export function underpaymentRate(day: CalendarDate, rates: InterestRates): UnderpaymentRate {
  const { table, assumedRate } = rates;
  if (day > table.knownThrough && assumedRate !== undefined) {
    const rate =
      assumedRate === "latest" ? entryOn(table, table.knownThrough).figures.rate : assumedRate;
    return { rate, source: undefined };
  }
  const { figures, source } = entryOn(table, day);
  return { rate: figures.rate, source };
}
