import { calendarDate, written, type CalendarDate } from "../../src/calendar/calendarDate";
import type { DueDate } from "../../src/calculation/dueDate/dueDate";
import type { Payment } from "../../src/calculation/penalty/underpaymentInterest";
import { isState, type State } from "../../src/calculation/state";
import { fiscalTaxYear, type TaxYear } from "../../src/calculation/taxYear";
import { Decimal } from "../../src/money/dollars";
import type { Act } from "../../src/rules/schema/dateTables";
import type { Source } from "../../src/rules/source";

/** What a test writes down, read as the calculation wants it. */

/** A date written YYYY-MM-DD. */
export const day = calendarDate;

/** A date as tests write it, if there is one. */
export const dateText = (date: CalendarDate | undefined): string | undefined =>
  date === undefined ? undefined : written(date);

/** Dollars, or a rate, written as text. */
export const usd = (text: string | number): Decimal => new Decimal(text);

/** A state by its postal code. */
export function state(code: string): State {
  if (!isState(code)) throw new RangeError(`"${code}" is no state`);
  return code;
}

/** The fiscal tax year that ends on a day. */
export function fiscalYear(lastDay: string): TaxYear {
  const year = fiscalTaxYear(calendarDate(lastDay));
  if (!year) throw new RangeError(`no fiscal year ends on ${lastDay}`);
  return year;
}

/** A source for figures made in a test. */
export const MADE_UP: Source = {
  document: "test",
  citation: "made for the test",
  confidence: "memory",
};

/**
 * A due date made by hand, for years before those that the tables cover.
 *
 * @param countedFrom - The day the law names.
 * @param lastDay - The last timely day, where weekends or holidays move it.
 * @param act - What is due.
 */
export function dueOn(countedFrom: string, lastDay = countedFrom, act: Act = "return"): DueDate {
  return {
    act,
    statutory: calendarDate(countedFrom),
    countedFrom: calendarDate(countedFrom),
    lastDay: calendarDate(lastDay),
    moves: [],
    source: MADE_UP,
  };
}

/** A payment in dollars. */
export const paid = (on: string, amount: string | number): Payment => ({
  date: calendarDate(on),
  amount: new Decimal(amount),
});
