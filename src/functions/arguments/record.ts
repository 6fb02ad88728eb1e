import { shortDate } from "../../calendar/writtenDate";
import type { CalendarDate } from "../../calendar/calendarDate";
import type { RequestRecord } from "../../calculation/season/requestRecord";
import { InputError } from "../cells/inputError";
import { optional, type Given } from "./argumentKind";
import { date, dateAfterYear } from "./date";

/** What was done about a request, and when. */
export const record = {
  requestedOn: optional(dateAfterYear),
  confirmedOn: optional(date),
  rejectedOn: optional(date),
  filedOn: optional(dateAfterYear),
};

function requireAfterRequest(
  name: string,
  answeredOn: CalendarDate | undefined,
  requestedOn: CalendarDate | undefined
): void {
  if (answeredOn === undefined) return;
  if (requestedOn === undefined)
    throw new InputError(
      "requestedOn",
      `The cell is blank, but ${name} is ${shortDate(answeredOn)}. Enter the date the request was made.`
    );
  if (answeredOn < requestedOn)
    throw new InputError(
      name,
      `${shortDate(answeredOn)} is before the request date, ${shortDate(requestedOn)}. Correct one of the two dates.`
    );
}

/**
 * The record of a request.
 *
 * @throws InputError when proof or a rejection is dated before the request, or there is no request.
 */
export function recordOf(
  given: Given<typeof record> & { readonly paidOn?: CalendarDate | undefined }
): RequestRecord {
  const { requestedOn, confirmedOn, rejectedOn, filedOn, paidOn } = given;
  requireAfterRequest("confirmedOn", confirmedOn, requestedOn);
  requireAfterRequest("rejectedOn", rejectedOn, requestedOn);
  return { requestedOn, confirmedOn, rejectedOn, filedOn, paidOn };
}
