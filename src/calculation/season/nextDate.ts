import { daysBetween, type CalendarDate } from "../../calendar/calendarDate";
import type { ClientDates } from "../dueDate/clientDates";
import type { ResendRules } from "../request/resendDeadline";
import type { RequestRecord } from "./requestRecord";
import { requestStage, type NextAct } from "./requestStage";

/** The next deadline of a client. */
export interface NextDate {
  readonly date: CalendarDate;
  /** What is due by that date, in order. */
  readonly acts: readonly (NextAct | "pay")[];
  /** Days from the as-of date to the deadline; negative if it has passed. */
  readonly daysLeft: number;
}

/**
 * The next deadline of a client: to pay, to request or file, to resend a rejected request, or to file the extended return. If a
 * deadline was missed, that deadline.
 *
 * The payment due date counts until the record says that the tax is paid. For a taxpayer out of the country it is before the
 * deadline to request the extension.
 *
 * @param dates - The client's dates.
 * @param record - What was done, with dates.
 * @param asOf - The as-of date.
 * @param rules - Perfection period, methods.
 * @returns The deadline, or `undefined` once the return is filed.
 * @throws NotInTableError for a rejected request if the perfection period is not in its table.
 */
export function nextDate(
  dates: ClientDates,
  record: RequestRecord,
  asOf: CalendarDate,
  rules: ResendRules
): NextDate | undefined {
  const { act, deadline } = requestStage(dates, record, asOf, rules);
  if (act === undefined || deadline === undefined) return undefined;
  const payBy = dates.payment.lastDay;
  const isPaid = record.paidOn !== undefined && record.paidOn <= asOf;
  const mustPay = !isPaid && asOf <= payBy;
  const on = (date: CalendarDate, acts: NextDate["acts"]): NextDate => ({
    date,
    acts,
    daysLeft: daysBetween(asOf, date),
  });
  if (mustPay && payBy === deadline) return on(deadline, [act, "pay"]);
  if (mustPay && (payBy < deadline || deadline < asOf)) return on(payBy, ["pay"]);
  return on(deadline, [act]);
}
