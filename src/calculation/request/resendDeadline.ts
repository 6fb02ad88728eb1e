import { addDays, earlierDate, laterDate, type CalendarDate } from "../../calendar/calendarDate";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { DueDate } from "../dueDate/dueDate";

/**
 * Last day to resend a rejected request: the end of the perfection period.
 *
 * The publication counts five calendar days from the due date, tax professionals count them from the rejection. The earlier of the
 * two dates is used, but never a date before the due date. It is not moved for a weekend. The perfection period is for the request
 * only; the payment due date does not move.
 *
 * @param due - The deadline to request the extension.
 * @param rejectedOn - The date the request was rejected.
 * @param rules - The perfection period in days.
 * @returns The last day of the perfection period.
 * @throws NotInTableError for a due date that the table does not cover.
 * @see Pub. 1345, rejected returns
 *
 * @example
 * // due 2026-04-15: rejected on 04-15 or later, resend by 04-20; rejected on 04-12, by 04-17; on 04-01, by 04-15
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
