import { addDays, earlierDate, laterDate, type CalendarDate } from "../../calendar/calendarDate";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { DueDate } from "../dueDate/dueDate";
import { methodDeadline } from "./methodDeadline";

/** The rules that set the last day to resend a rejected request. */
export type ResendRules = Pick<Rulebook, "perfectionPeriod" | "requestMethods">;

/**
 * Last day to e-file a rejected request again: the end of the perfection period.
 *
 * The publication counts five calendar days from the due date, tax professionals count them from the rejection. The earlier of the
 * two dates is used, but never a date before the e-file deadline. It is not moved for a weekend. The client's own disaster
 * postponement does not move the e-file deadline, so it does not move the perfection period; a paper request can still be mailed
 * through the end of the postponement. The perfection period is for the request only; the payment due date does not move.
 *
 * @param regular - Regular due date of the return.
 * @param rejectedOn - The date the request was rejected.
 * @param rules - The perfection period in days, the methods.
 * @returns The last day of the perfection period.
 * @throws NotInTableError for an e-file deadline that the table does not cover.
 * @see Pub. 1345, rejected returns; IR-2025-41
 *
 * @example
 * // due 2026-04-15: rejected on 04-15 or later, resend by 04-20; rejected on 04-12, by 04-17; on 04-01, by 04-15
 */
export function resendDeadline(
  regular: DueDate,
  rejectedOn: CalendarDate,
  rules: ResendRules
): CalendarDate {
  const due = methodDeadline("e-file", regular, rules);
  const days = entryOn(rules.perfectionPeriod, due).figures.days.toNumber();
  const fromDue = addDays(due, days);
  const fromRejection = addDays(rejectedOn, days);
  const earlier = earlierDate(fromRejection, fromDue);
  return laterDate(earlier, due);
}
