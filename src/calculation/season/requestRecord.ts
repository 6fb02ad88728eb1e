import type { CalendarDate } from "../../calendar/calendarDate";

/** Dates that the preparer recorded for a client's request and return. A date that is not given has not happened yet. */
export interface RequestRecord {
  /** Date the request was first made: sent, mailed, or made by electronic payment. */
  readonly requestedOn?: CalendarDate | undefined;
  /** Date proof was received: acceptance, confirmation number or mailing receipt. */
  readonly confirmedOn?: CalendarDate | undefined;
  /** Date an e-filed request was rejected. */
  readonly rejectedOn?: CalendarDate | undefined;
  readonly filedOn?: CalendarDate | undefined;
  /** Date the tax was paid in full, or any date if no tax is owed. */
  readonly paidOn?: CalendarDate | undefined;
}
