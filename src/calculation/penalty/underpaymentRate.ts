import type { CalendarDate } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";

/** The rate for dates after the last published quarter: a fraction per year, or `latest` for the last published rate. */
export type AssumedRate = Decimal | "latest";

/** Published rates, and the rate for later dates. */
export interface InterestRates {
  readonly table: Rulebook["underpaymentRate"];
  /** If not given, a date after the published rates has no rate. */
  readonly assumedRate?: AssumedRate | undefined;
}

/** The rate on a date, without a source if it is assumed. */
export interface UnderpaymentRate {
  readonly rate: Decimal;
  readonly source: Source | undefined;
}

/**
 * The underpayment rate in force on a date: the federal short-term rate plus three points, set for each quarter.
 *
 * @param date - The date on which interest accrues.
 * @param rates - rules/underpayment-rate.json and the assumed rate, if any.
 * @returns A fraction per year.
 * @throws NotInTableError for a date before the table, or after it if no rate is assumed.
 * @see 26 U.S.C. 6621(a)(2)
 *
 * @example
 * underpaymentRate("2026-04-16", { table }).rate //=> 0.06
 */
export function underpaymentRate(date: CalendarDate, rates: InterestRates): UnderpaymentRate {
  const { table, assumedRate } = rates;
  if (date > table.knownThrough && assumedRate !== undefined) {
    const rate =
      assumedRate === "latest" ? entryOn(table, table.knownThrough).figures.rate : assumedRate;
    return { rate, source: undefined };
  }
  const { figures, source } = entryOn(table, date);
  return { rate: figures.rate, source };
}
