import { calendarDate, type CalendarDate } from "../../calendar/calendarDate";
import { shortDate } from "../../calendar/writtenDate";

/** The date that rule tables have if the law has no end date. */
const NO_END_DATE = calendarDate("9999-12-31");

/**
 * The first or last date that a rule table covers, as a cell shows it.
 *
 * @example
 * coverageDateText("2026-12-31") //=> "12/31/2026"
 * coverageDateText("9999-12-31") //=> "no end date"
 */
export function coverageDateText(date: CalendarDate): string {
  return date === NO_END_DATE ? "no end date" : shortDate(date);
}
