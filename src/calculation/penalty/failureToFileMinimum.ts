import { daysBetween, type CalendarDate } from "../../calendar/calendarDate";
import { Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { DueDate } from "../dueDate/dueDate";

/** The least that a very late return costs. */
export interface FailureToFileMinimum {
  readonly amount: Decimal;
  readonly source: Source;
}

/**
 * Minimum addition to tax for a return filed more than 60 days after its due date, extensions included.
 *
 * The lesser of the year's amount and the whole of the net tax: nothing where no tax is unpaid (100 T.C. 374). The year is that
 * of the due date without any extension.
 *
 * @param due - When the return was due, with its extension if there was one.
 * @param unextended - When it was due without one.
 * @param filedOn - The day it was filed.
 * @param netTax - Dollars of tax not paid by the last day to pay.
 * @param rules - The day count and the amounts by year.
 * @returns The minimum, or `undefined` where it does not apply.
 * @throws NotInTableError where it applies and the year's amount is not published.
 * @see 26 U.S.C. 6651(a), last sentence, (j)
 *
 * @example
 * // due 2026-04-15, filed 2026-07-01, net tax $9,000 //=> 525
 */
export function failureToFileMinimum(
  due: DueDate,
  unextended: DueDate,
  filedOn: CalendarDate,
  netTax: Decimal,
  rules: Pick<Rulebook, "failureToFile" | "failureToFileMinimum">
): FailureToFileMinimum | undefined {
  const { minimumAfterDays } = entryOn(rules.failureToFile, unextended.countedFrom).figures;
  const daysLate = daysBetween(due.countedFrom, filedOn);
  if (!netTax.greaterThan(0) || !minimumAfterDays.lessThan(daysLate)) return undefined;
  const { figures, source } = entryOn(rules.failureToFileMinimum, unextended.countedFrom);
  return { amount: Decimal.min(figures.amount, netTax), source };
}
