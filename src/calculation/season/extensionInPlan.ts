import type { CalendarDate } from "../../calendar/calendarDate";
import type { Rulebook } from "../../rules/rulebook";
import type { ClientDates } from "../dueDate/clientDates";
import type { RequestRecord } from "./requestRecord";
import { requestStage } from "./requestStage";

/**
 * Whether to reckon with the extension for a client: it was asked for in time, or can still be.
 *
 * A return that has been filed keeps the extension it had; one that missed the extended day had it all the same.
 *
 * @param dates - The client's dates.
 * @param record - What was done when.
 * @param asOf - The day.
 * @param rules - Days to send a rejected request again.
 * @returns Whether the additions count from the extended day.
 * @throws NotInTableError for a rejected request whose days to send again are not held.
 */
export function extensionInPlan(
  dates: ClientDates,
  record: RequestRecord,
  asOf: CalendarDate,
  rules: Pick<Rulebook, "perfectionPeriod">
): boolean {
  const { stage, missed } = requestStage(dates, { ...record, filedOn: undefined }, asOf, rules);
  return stage !== "past due" || missed === "extended date missed";
}
