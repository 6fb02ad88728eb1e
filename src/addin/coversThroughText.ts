import type { CalendarDate } from "../calendar/calendarDate";
import { longDate } from "../calendar/writtenDate";

/** The date that rule tables have if the law has no end date. */
const NO_END_DATE = "9999-12-31";

/**
 * The last date a rule table covers, as a sentence writes it.
 *
 * @example
 * coversThroughText("2026-12-31") //=> "December 31, 2026"
 * coversThroughText("9999-12-31") //=> "no end date"
 */
export function coversThroughText(date: CalendarDate): string {
  return date === NO_END_DATE ? "no end date" : longDate(date);
}
