import { addDays, daysBetween, laterDate, type CalendarDate } from "../../calendar/calendarDate";
import { InputError } from "../../functions/cells/inputError";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { TaxYear } from "../taxYear";
import { returnDueDate, type ReturnDateRules } from "./returnDueDate";

/**
 * Last day to file and pay after service in a combat zone or contingency operation.
 *
 * 180 days after leaving, plus the days that were left of the filing season on entering: all of them when service began before
 * the season, else from the day of entry through April 15, both counted (entering March 1 leaves 46). No weekend or postponement lengthens the
 * season. The answer is not moved
 * for weekends, the earlier day being the safe one. Hospitalization, which may lengthen the time, is not worked out.
 *
 * @param taxYear - The year of the return.
 * @param entered - Day of entering; on or before the day the return is due.
 * @param left - Last day there, or last day of qualified hospitalization.
 * @param rules - Days disregarded, due dates, holidays, postponements.
 * @returns The last day; never before the regular due date.
 * @throws InputError when service began after the return was due, or ended before it began.
 * @see 26 U.S.C. 7508(a); Pub. 3, "Extension of deadlines"
 *
 * @example
 * combatZoneDueDate(calendarTaxYear(2025), "2026-03-01", "2026-09-30", rulebook) //=> "2027-05-14"
 */
export function combatZoneDueDate(
  taxYear: TaxYear,
  entered: CalendarDate,
  left: CalendarDate,
  rules: ReturnDateRules & Pick<Rulebook, "combatZone">
): CalendarDate {
  if (left < entered)
    throw new InputError("left", `${left} is before the day of entering, ${entered}`);
  const { statutory: seasonEnds, lastDay } = returnDueDate(taxYear, "resident", {}, rules);
  if (entered > lastDay) {
    throw new InputError(
      "entered",
      `${entered} is after the return was due, ${lastDay}; no day of the filing season was left, work an extended return by hand`
    );
  }
  const dayBeforeSeason = taxYear.lastDay;
  const lastDayAtHome = laterDate(addDays(entered, -1), dayBeforeSeason);
  const daysLeft = Math.max(0, daysBetween(lastDayAtHome, seasonEnds));
  const { daysAfterLeaving } = entryOn(rules.combatZone, left).figures;
  const afterService = addDays(left, daysAfterLeaving.toNumber() + daysLeft);
  return laterDate(afterService, lastDay);
}
