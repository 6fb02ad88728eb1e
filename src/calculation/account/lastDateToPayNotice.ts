import { addDays, type CalendarDate } from "../../calendar/calendarDate";
import { nextWorkday } from "../../calendar/nextWorkday";
import type { Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import { requireReach } from "../../rules/listTable";
import type { Rulebook } from "../../rules/rulebook";
import type { State } from "../state";

/**
 * Last date to pay a notice and demand without interest after its date.
 *
 * It is the 21st calendar day, moved to a workday of the District of Columbia (section 7503), or the tenth business day if the notice
 * demands a large amount. A business day is no Saturday, Sunday or legal holiday of the District or of the taxpayer's state. Of the
 * states, only Patriots' Day is in the table, so that other state holidays never lengthen the time.
 *
 * @param noticeOn - Date of the notice and demand.
 * @param demanded - Dollars that it demands.
 * @param state - State of residence, if known.
 * @param rules - The days, and the holidays.
 * @returns The last date.
 * @throws NotInTableError for a notice before the table, or outside the dates that the holiday table covers.
 * @see 26 U.S.C. 6601(e)(2)(A), (e)(3), 7503; 26 CFR 301.6601-1(f)(3) to (5)
 *
 * @example
 * // notice of Monday, June 2, 2025, below $100,000
 * //=> 2025-06-23
 */
export function lastDateToPayNotice(
  noticeOn: CalendarDate,
  demanded: Decimal,
  state: State | undefined,
  rules: Pick<Rulebook, "legalHolidays" | "noticeAndDemand">
): CalendarDate {
  const { calendarDays, businessDays, largeAmount } = entryOn(
    rules.noticeAndDemand,
    noticeOn
  ).figures;
  requireReach(rules.legalHolidays, noticeOn);
  const holidays = rules.legalHolidays.rows;
  if (demanded.lessThan(largeAmount))
    return nextWorkday(addDays(noticeOn, calendarDays.toNumber()), holidays).date;
  let date = noticeOn;
  for (let day = 0; businessDays.greaterThan(day); day++)
    date = nextWorkday(addDays(date, 1), holidays, state).date;
  return date;
}
