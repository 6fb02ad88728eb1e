import type { RequestRecord } from "../calculation/season/requestRecord";
import type { TaxYear } from "../calculation/taxYear";
import type { CalendarDate } from "../calendar/calendarDate";
import { InputError } from "../inputError";
import { optionalDay, requireAfterTaxYear } from "./dayArguments";

/** The cells in which a preparer keeps what was done when. */
export interface RecordCells {
  readonly requestedOn: unknown;
  readonly confirmedOn: unknown;
  readonly rejectedOn: unknown;
  readonly filedOn: unknown;
  readonly paidOn?: unknown;
}

function requireAfterAsking(
  name: string,
  day: CalendarDate | undefined,
  requestedOn: CalendarDate | undefined
): void {
  if (day === undefined) return;
  if (requestedOn === undefined)
    throw new InputError(
      "requestedOn",
      `is empty while ${name} is ${day}; give the day the request was made`
    );
  if (day < requestedOn)
    throw new InputError(name, `${day} is before the request was made, ${requestedOn}`);
}

/**
 * Reads what was done when, and refuses days that cannot follow each other.
 *
 * @param cells - The days; each may be left out.
 * @param year - The year of the return, before whose end nothing can be asked or filed.
 * @returns The record.
 */
export function requestRecord(cells: RecordCells, year: TaxYear): RequestRecord {
  const requestedOn = optionalDay("requestedOn", cells.requestedOn);
  const confirmedOn = optionalDay("confirmedOn", cells.confirmedOn);
  const rejectedOn = optionalDay("rejectedOn", cells.rejectedOn);
  const filedOn = optionalDay("filedOn", cells.filedOn);
  const paidOn = optionalDay("paidOn", cells.paidOn);
  requireAfterAsking("confirmedOn", confirmedOn, requestedOn);
  requireAfterAsking("rejectedOn", rejectedOn, requestedOn);
  if (requestedOn !== undefined) requireAfterTaxYear("requestedOn", requestedOn, year);
  if (filedOn !== undefined) requireAfterTaxYear("filedOn", filedOn, year);
  return { requestedOn, confirmedOn, rejectedOn, filedOn, paidOn };
}
