import type { CalendarDate } from "../../calendar/calendarDate";

/** What the preparer has noted of a client's request and return; a day left out has not come yet. */
export interface RequestRecord {
  /** First day the request was made: sent, mailed, or carried by an electronic payment. */
  readonly requestedOn?: CalendarDate | undefined;
  /** Day its proof came in: acknowledgment, confirmation number, mailing receipt. */
  readonly confirmedOn?: CalendarDate | undefined;
  /** Day an e-filed request was rejected. */
  readonly rejectedOn?: CalendarDate | undefined;
  readonly filedOn?: CalendarDate | undefined;
  /** Day the tax was paid in full, or any day once nothing is owed. */
  readonly paidOn?: CalendarDate | undefined;
}
