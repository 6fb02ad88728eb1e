import type { CalendarDate } from "../../calendar/calendarDate";
import type { RequestRecord } from "./requestRecord";

/**
 * The record as it was known on a date: what happened later is left out.
 *
 * @param record - What was done, with dates.
 * @param asOf - The as-of date.
 * @returns The record with the dates through the as-of date.
 */
export function recordAsOf(record: RequestRecord, asOf: CalendarDate): RequestRecord {
  const known = (date: CalendarDate | undefined): CalendarDate | undefined =>
    date !== undefined && date <= asOf ? date : undefined;
  return {
    requestedOn: known(record.requestedOn),
    confirmedOn: known(record.confirmedOn),
    rejectedOn: known(record.rejectedOn),
    filedOn: known(record.filedOn),
    paidOn: known(record.paidOn),
  };
}
