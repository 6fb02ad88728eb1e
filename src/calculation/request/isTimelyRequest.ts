import type { CalendarDate } from "../../calendar/calendarDate";
import type { DueDate } from "../dueDate/dueDate";

/**
 * Whether a request made on a date gives the extension: it must be made by the regular due date of the return.
 *
 * @param requestedOn - The date of the request.
 * @param regular - Regular due date of the return, which is also the deadline to request the extension.
 * @returns Whether the request is on time.
 * @see 26 CFR 1.6081-4(b)(2)
 *
 * @example
 * // due 2026-04-15: requested 2026-04-15 is on time, 2026-04-16 is late
 */
export function isTimelyRequest(requestedOn: CalendarDate, regular: DueDate): boolean {
  return requestedOn <= regular.lastDay;
}
