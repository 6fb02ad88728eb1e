import { daysBetween, type CalendarDate } from "../../calendar/calendarDate";
import type { Rulebook } from "../../rules/rulebook";
import type { ClientDates } from "../dueDate/clientDates";
import type { RequestRecord } from "./requestRecord";
import { requestStage, type NextAct } from "./requestStage";

/** The next date that binds a client. */
export interface NextDate {
  readonly day: CalendarDate;
  /** What is due on it, in order. */
  readonly acts: readonly (NextAct | "pay")[];
  /** Days from the day asked about; below zero when the date has passed. */
  readonly daysLeft: number;
}

/**
 * The next date that binds a client: to pay, to ask or file, to send a rejected request again, to file with the extension. Where a
 * date was let pass, that date.
 *
 * The day to pay counts until the tax is noted as paid. Abroad it comes before the day to ask.
 *
 * @param dates - The client's dates.
 * @param record - What was done when.
 * @param asOf - The day.
 * @param rules - Days to send a rejected request again.
 * @returns The date, or `undefined` once the return is filed.
 * @throws NotInTableError for a rejected request whose days to send again are not held.
 */
export function nextDate(
  dates: ClientDates,
  record: RequestRecord,
  asOf: CalendarDate,
  rules: Pick<Rulebook, "perfectionPeriod">
): NextDate | undefined {
  const { act, lastDay } = requestStage(dates, record, asOf, rules);
  if (act === undefined || lastDay === undefined) return undefined;
  const payBy = dates.payment.lastDay;
  const isPaid = record.paidOn !== undefined && record.paidOn <= asOf;
  const mustPay = !isPaid && asOf <= payBy;
  const on = (day: CalendarDate, acts: NextDate["acts"]): NextDate => ({
    day,
    acts,
    daysLeft: daysBetween(asOf, day),
  });
  if (mustPay && payBy === lastDay) return on(lastDay, [act, "pay"]);
  if (mustPay && (payBy < lastDay || lastDay < asOf)) return on(payBy, ["pay"]);
  return on(lastDay, [act]);
}
