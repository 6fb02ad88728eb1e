import { addDays, earlierDate, type CalendarDate } from "../../calendar/calendarDate";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { ClientDates } from "./clientDates";

/**
 * Last day to receive replacement property in a like-kind exchange: 180 days after the transfer, or the due date of the return for
 * the year of the transfer, whichever is earlier. A valid extension counts, so a sale late in the year needs it to keep the 180 days.
 *
 * The 180 days are not moved for weekends, holidays or a disaster postponement, because the earlier date is safe.
 *
 * @param soldOn - Date of the transfer of the property given up, in the tax year of the return.
 * @param dates - The client's dates for that year.
 * @param validExtension - Whether a valid request was made on time.
 * @param rules - Days of the exchange.
 * @returns The last day.
 * @throws NotInTableError for a date that the table does not cover.
 * @see 26 U.S.C. 1031(a)(3)(B)
 *
 * @example
 * // sold 2025-11-10: 2026-04-15 without an extension, 2026-05-09 with one
 */
export function exchangeDate(
  soldOn: CalendarDate,
  dates: ClientDates,
  validExtension: boolean,
  rules: Pick<Rulebook, "likeKindExchange">
): CalendarDate {
  const { days } = entryOn(rules.likeKindExchange, soldOn).figures;
  const returnDue = validExtension ? dates.extended : dates.regular;
  return earlierDate(addDays(soldOn, days.toNumber()), returnDue.lastDay);
}
