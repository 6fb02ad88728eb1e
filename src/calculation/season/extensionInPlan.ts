import type { CalendarDate } from "../../calendar/calendarDate";
import type { ClientDates } from "../dueDate/clientDates";
import type { ResendRules } from "../request/resendDeadline";
import type { RequestRecord } from "./requestRecord";
import { requestStage } from "./requestStage";

/**
 * Whether a plan can count on the extension: it was requested on time, or still can be.
 *
 * A filed return keeps the extension it had, and cannot get one that was not requested or was rejected. A return filed after the
 * extended due date had the extension too.
 *
 * @param dates - The client's dates.
 * @param record - What was done, with dates.
 * @param asOf - The as-of date.
 * @param rules - Perfection period, methods.
 * @returns Whether the failure-to-file penalty counts from the extended due date.
 * @throws NotInTableError for a rejected request if the perfection period is not in its table.
 */
export function extensionInPlan(
  dates: ClientDates,
  record: RequestRecord,
  asOf: CalendarDate,
  rules: ResendRules
): boolean {
  const { filedOn } = record;
  const { stage, missed } = requestStage(dates, { ...record, filedOn: undefined }, asOf, rules);
  const isFiled = filedOn !== undefined && filedOn <= asOf;
  if (isFiled && (stage === "not requested" || stage === "rejected")) return false;
  return stage !== "past due" || missed === "extended date missed";
}
