import { laterDate, type CalendarDate } from "../../calendar/calendarDate";
import type { ClientDates } from "../dueDate/clientDates";
import type { RequestRecord } from "./requestRecord";

/** What the preparer recorded and plans for the return and the balance. */
export interface FilingPlan {
  readonly record: RequestRecord;
  readonly plannedFilingDate: CalendarDate | undefined;
  readonly plannedPaymentDate: CalendarDate | undefined;
  /** Whether the plan can count on the extension. */
  readonly validExtension: boolean;
  readonly asOf: CalendarDate;
}

/** When the return is filed and the balance paid, in fact or as planned. */
export interface PlannedDates {
  readonly filedOn: CalendarDate;
  readonly paidOn: CalendarDate;
}

/**
 * The dates on which a plan files the return and pays the balance.
 *
 * The recorded date comes first, then the planned date. Without either, the return is filed on the extended due date if there is an
 * extension, otherwise on the as-of date, and the balance is paid with the return. A return that is not filed cannot be filed before
 * the as-of date. A planned payment date that has passed stays, because the payment may have been made and not recorded.
 *
 * @param dates - The client's dates.
 * @param plan - Recorded and planned dates.
 * @returns Filing date and payment date.
 */
export function plannedDates(dates: ClientDates, plan: FilingPlan): PlannedDates {
  const { record, plannedFilingDate, plannedPaymentDate, validExtension, asOf } = plan;
  const withoutPlan = validExtension ? dates.extended.lastDay : asOf;
  const filedOn = record.filedOn ?? laterDate(plannedFilingDate ?? withoutPlan, asOf);
  return { filedOn, paidOn: record.paidOn ?? plannedPaymentDate ?? filedOn };
}
