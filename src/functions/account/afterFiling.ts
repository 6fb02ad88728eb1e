import type { CalendarDate } from "../../calendar/calendarDate";
import { shortDate } from "../../calendar/writtenDate";
import type { ClientDates } from "../../calculation/dueDate/clientDates";
import { optional } from "../arguments/argumentKind";
import { dateAfterYear } from "../arguments/date";
import { InputError } from "../cells/inputError";

/** The notices of a payment history. */
export const notices = {
  noticeOn: optional(dateAfterYear),
  levyNoticeOn: optional(dateAfterYear),
};

/** The dates that follow the filing of a return. */
interface AfterFiling {
  readonly filedOn: CalendarDate;
  readonly agreementOn: CalendarDate | undefined;
  readonly noticeOn: CalendarDate | undefined;
  readonly levyNoticeOn: CalendarDate | undefined;
}

/**
 * Refuses an agreement or a notice that comes too early: nothing is billed before the payment due date has passed and the return is
 * filed, and a levy notice follows a notice and demand.
 *
 * @throws InputError for a date out of this order, and for a levy notice without the notice before it.
 */
export function requireAfterFiling(given: AfterFiling, { payment }: ClientDates): void {
  const { filedOn, agreementOn, noticeOn, levyNoticeOn } = given;
  for (const [name, date] of Object.entries({ agreementOn, noticeOn })) {
    if (date === undefined) continue;
    if (date <= payment.lastDay)
      throw new InputError(
        name,
        `${shortDate(date)} is not after the payment due date, ${shortDate(payment.lastDay)}. Enter a date after it, or leave the cell blank.`
      );
    if (date < filedOn)
      throw new InputError(
        name,
        `${shortDate(date)} is before the return is filed on ${shortDate(filedOn)}. Correct one of the two dates.`
      );
  }
  if (levyNoticeOn === undefined) return;
  if (noticeOn === undefined)
    throw new InputError(
      "noticeOn",
      "The cell is blank, but levyNoticeOn has a date. Enter the date of the first notice of the balance due."
    );
  if (levyNoticeOn <= noticeOn)
    throw new InputError(
      "levyNoticeOn",
      `${shortDate(levyNoticeOn)} is not after the first notice of ${shortDate(noticeOn)}. Correct one of the two dates.`
    );
}
