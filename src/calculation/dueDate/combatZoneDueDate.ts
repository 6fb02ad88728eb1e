import { addDays, daysBetween, laterDate, type CalendarDate } from "../../calendar/calendarDate";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { TaxYear } from "../taxYear";
import { returnDueDate, type ReturnDateRules } from "./returnDueDate";

/**
 * Last day to file and pay after service in a combat zone or contingency operation.
 *
 * 180 days after the service ends, plus the days of the filing season that were left when it began: the whole season if it began
 * before the season, otherwise the days from the date of entry through April 15, counting both (46 for an entry on March 1). A
 * weekend or a postponement does not lengthen the season. The result is not moved for weekends, because the earlier date is
 * safe. More time for hospitalization is not calculated.
 *
 * Precondition: the service began on or before the regular due date of a resident's return, and ended on or after the date it
 * began. An entry after the due date leaves no days of the filing season, and an extension may then count instead.
 *
 * @param taxYear - The year of the return.
 * @param enteredZoneOn - First date of the service.
 * @param leftZoneOn - Last date of the service, or of qualified hospitalization.
 * @param rules - Days disregarded, due dates, holidays, postponements.
 * @returns The last day, never before the regular due date.
 * @throws NotInTableError for a tax year or a date that the tables do not cover.
 * @see 26 U.S.C. 7508(a); Pub. 3, "Extension of deadlines"
 *
 * @example
 * combatZoneDueDate(calendarTaxYear(2025), "2026-03-01", "2026-09-30", rulebook) //=> "2027-05-14"
 */
export function combatZoneDueDate(
  taxYear: TaxYear,
  enteredZoneOn: CalendarDate,
  leftZoneOn: CalendarDate,
  rules: ReturnDateRules & Pick<Rulebook, "combatZone">
): CalendarDate {
  const { statutory: seasonEnds, lastDay } = returnDueDate(taxYear, "resident", {}, rules);
  const dayBeforeSeason = taxYear.lastDay;
  const lastDayAtHome = laterDate(addDays(enteredZoneOn, -1), dayBeforeSeason);
  const daysLeft = Math.max(0, daysBetween(lastDayAtHome, seasonEnds));
  const { daysAfterLeaving } = entryOn(rules.combatZone, leftZoneOn).figures;
  const afterService = addDays(leftZoneOn, daysAfterLeaving.toNumber() + daysLeft);
  return laterDate(afterService, lastDay);
}
