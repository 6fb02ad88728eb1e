import type { RequestRecord } from "../calculation/season/requestRecord";
import type { TaxYear } from "../calculation/taxYear";
import type { CalendarDate } from "../calendar/calendarDate";
import { InputError } from "../inputError";
import { optionalDay, requireAfterTaxYear } from "./dayArguments";

/** The cells in which a preparer keeps what was done when. */
export interface RecordCells {
  readonly askedOn: unknown;
  readonly confirmedOn: unknown;
  readonly rejectedOn: unknown;
  readonly filedOn: unknown;
  readonly paidOn?: unknown;
}

function requireAfterAsking(
  name: string,
  day: CalendarDate | undefined,
  askedOn: CalendarDate | undefined
): void {
  if (day === undefined) return;
  if (askedOn === undefined)
    throw new InputError(
      "askedOn",
      `is empty while ${name} is ${day}; give the day the request was made`
    );
  if (day < askedOn)
    throw new InputError(name, `${day} is before the request was made, ${askedOn}`);
}

/**
 * Reads what was done when, and refuses days that cannot follow each other.
 *
 * @param cells - The days; each may be left out.
 * @param year - The year of the return, before whose end nothing can be asked or filed.
 * @returns The record.
 */
export function requestRecord(cells: RecordCells, year: TaxYear): RequestRecord {
  const askedOn = optionalDay("askedOn", cells.askedOn);
  const confirmedOn = optionalDay("confirmedOn", cells.confirmedOn);
  const rejectedOn = optionalDay("rejectedOn", cells.rejectedOn);
  const filedOn = optionalDay("filedOn", cells.filedOn);
  const paidOn = optionalDay("paidOn", cells.paidOn);
  requireAfterAsking("confirmedOn", confirmedOn, askedOn);
  requireAfterAsking("rejectedOn", rejectedOn, askedOn);
  if (askedOn !== undefined) requireAfterTaxYear("askedOn", askedOn, year);
  if (filedOn !== undefined) requireAfterTaxYear("filedOn", filedOn, year);
  return { askedOn, confirmedOn, rejectedOn, filedOn, paidOn };
}
