import type { CalendarDate } from "../../calendar/calendarDate";
import type { RequestMethod } from "../../rules/requestWords";
import type { Rulebook } from "../../rules/rulebook";
import type { DueDate } from "../dueDate/dueDate";

/**
 * Last day to make the request by a method.
 *
 * The client's own disaster postponement extends only the methods that the table says. The others close on the date to which weekends,
 * holidays and nationwide postponements move the regular due date.
 *
 * @param method - The method.
 * @param regular - Regular due date of the return, which is also the deadline to request the extension.
 * @param rules - The methods.
 * @returns The last day for the method, never after the deadline to request the extension.
 * @see IR-2025-41; 26 CFR 1.6081-4(b)
 *
 * @example
 * // due 2025-04-15, postponed to 2025-05-01: e-file 2025-04-15, paper 2025-05-01
 */
export function methodDeadline(
  method: RequestMethod,
  regular: DueDate,
  rules: Pick<Rulebook, "requestMethods">
): CalendarDate {
  const rule = rules.requestMethods.rows.find((row) => row.method === method);
  if (rule?.postponementExtends) return regular.lastDay;
  const postponed = regular.moves.find(({ because }) => because === "disaster postponement");
  return postponed?.from ?? regular.lastDay;
}
