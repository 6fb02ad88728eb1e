import { daysBetween, type CalendarDate } from "../../calendar/calendarDate";
import { Decimal, isMoreThanZero } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { DueDate } from "../dueDate/dueDate";

/** Minimum penalty for a return more than 60 days late. */
export interface FailureToFileMinimum {
  readonly amount: Decimal;
  readonly source: Source;
}

/**
 * Minimum penalty for a return filed more than 60 days after its due date, including extensions.
 *
 * The lesser of the amount for the year and the whole unpaid tax; none if no tax is unpaid (100 T.C. 374). The year is the one in
 * which the return was required to be filed, without an extension (section 6651(j)). A postponement into the next year does not
 * change it: section 7508A disregards the days of the period, and does not move the due date. The 60 days count from its end.
 *
 * @param due - Due date of the return, including any extension.
 * @param regular - Due date of the return without an extension.
 * @param filedOn - The date the return was filed.
 * @param unpaidTax - Dollars of tax not paid by the regular due date.
 * @param rules - The day count and the amounts by year.
 * @returns The minimum in dollars, or `undefined` if it does not apply.
 * @throws NotInTableError if it applies and the year's amount is not published.
 * @see 26 U.S.C. 6651(a), last sentence, (j), 7508A(a); 26 CFR 301.7508A-1(b)(4)
 *
 * @example
 * // due 2026-04-15, filed 2026-07-01, unpaid tax $9,000 //=> 525
 */
export function failureToFileMinimum(
  due: DueDate,
  regular: DueDate,
  filedOn: CalendarDate,
  unpaidTax: Decimal,
  rules: Pick<Rulebook, "failureToFile" | "failureToFileMinimum">
): FailureToFileMinimum | undefined {
  const { minimumAfterDays } = entryOn(rules.failureToFile, regular.statutory).figures;
  const daysLate = daysBetween(due.countedFrom, filedOn);
  if (!isMoreThanZero(unpaidTax) || !minimumAfterDays.lessThan(daysLate)) return undefined;
  const { figures, source } = entryOn(rules.failureToFileMinimum, regular.statutory);
  return { amount: Decimal.min(figures.amount, unpaidTax), source };
}
