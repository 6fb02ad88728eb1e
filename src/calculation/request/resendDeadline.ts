import { addDays, earlierDate, laterDate, type CalendarDate } from "../../calendar/calendarDate";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { DueDate } from "../dueDate/dueDate";

/**
 * Last day to send a rejected request again.
 *
 * The publication counts five calendar days from the due date, the trade from the rejection. The earlier of the two is used, but
 * never a day before the due date, and it is never moved for a weekend. The days are for the request only: the payment stays due
 * when it was.
 *
 * @param due - The last day to ask.
 * @param rejectedOn - The day the request was rejected.
 * @param rules - Days to send again.
 * @returns The day.
 * @throws NotInTableError for a due date whose days are not held.
 * @see Pub. 1345, rejected returns
 *
 * @example
 * // asked by 2026-04-15: rejected on 04-15 or later, send again by 04-20; rejected on 04-12, by 04-17; on 04-01, by 04-15
 */
export function resendDeadline(
  due: DueDate,
  rejectedOn: CalendarDate,
  rules: Pick<Rulebook, "perfectionPeriod">
): CalendarDate {
  const days = entryOn(rules.perfectionPeriod, due.lastDay).figures.days.toNumber();
  const fromDue = addDays(due.lastDay, days);
  const fromRejection = addDays(rejectedOn, days);
  const earlier = earlierDate(fromRejection, fromDue);
  return laterDate(earlier, due.lastDay);
}
