import { compareDates } from "../../calendar/calendarDate";
import type { CalendarSubject } from "../../rules/calendarWords";
import type { Circumstances } from "../dueDate/dueDate";
import type { FilerType } from "../filerType";
import type { TaxYear } from "../taxYear";
import { companionDates, type CompanionRules } from "./companionDates";
import { returnDeadlines, type ReturnDeadlineRules } from "./returnDeadlines";
import type { SeasonDate } from "./seasonDate";

/**
 * Deadlines of a client on a subject, in order of dates: those of the return, those that other law ties to it, or all.
 *
 * @param taxYear - Calendar or fiscal tax year of the return.
 * @param filerType - Filer type.
 * @param circumstances - Residence and disaster postponement.
 * @param subject - Which deadlines, or all.
 * @param rules - Due dates, installments, holidays, postponements, companion dates.
 * @returns The deadlines in order of their dates with a valid extension; none for a subject that a fiscal year does not have.
 * @throws NotInTableError for a tax year that the tables do not cover.
 */
export function seasonCalendar(
  taxYear: TaxYear,
  filerType: FilerType,
  circumstances: Circumstances,
  subject: CalendarSubject | "all",
  rules: ReturnDeadlineRules & CompanionRules
): readonly SeasonDate[] {
  const isOfReturn = subject === "return" || subject === "all";
  const dates = [
    ...(isOfReturn ? returnDeadlines(taxYear, filerType, circumstances, rules) : []),
    ...companionDates(taxYear, filerType, circumstances, subject, rules),
  ];
  return dates.sort((one, other) => compareDates(one.date, other.date));
}
