import { addDays, type CalendarDate } from "../../calendar/calendarDate";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { DueDate } from "../dueDate/dueDate";

/**
 * Last day to send a rejected request again.
 *
 * The publication counts five calendar days from the due date, the trade often from the rejection. The earlier of the two is used,
 * never moved for a weekend. The days are for the request only: the payment stays due when it was.
 *
 * @param due - The last day to ask.
 * @param rules - Days to send again.
 * @returns The day.
 * @throws NotPublishedError for a due date whose days are not held.
 * @see Pub. 1345, rejected returns
 *
 * @example
 * // asked by 2026-04-15, rejected on 2026-04-14: send again by 2026-04-20
 */
export function lastDayToSendAgain(
  due: DueDate,
  rules: Pick<Rulebook, "rejectWindow">
): CalendarDate {
  const { figures } = entryOn(rules.rejectWindow, due.lastDay);
  return addDays(due.lastDay, figures.days.toNumber());
}
