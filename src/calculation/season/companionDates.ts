import { addMonths, yearOf, type CalendarDate } from "../../calendar/calendarDate";
import type { CalendarSubject } from "../../rules/calendarWords";
import { requireReach } from "../../rules/listTable";
import type { Rulebook } from "../../rules/rulebook";
import { clientDates, type ClientDates } from "../dueDate/clientDates";
import { dateAfterTaxYear } from "../dueDate/dateAfterTaxYear";
import { dueDate, type Circumstances, type DueDate } from "../dueDate/dueDate";
import type { ReturnDateRules } from "../dueDate/returnDueDate";
import type { FilerType } from "../filerType";
import { isFiscalYear, type TaxYear } from "../taxYear";
import type { SeasonDate } from "./seasonDate";

type Row = Rulebook["companionDates"]["rows"][number];
type Moved = Pick<DueDate, "lastDay" | "moves">;

/** The rules that companion dates need. */
export type CompanionRules = ReturnDateRules & Pick<Rulebook, "companionDates">;

const unmoved = (lastDay: CalendarDate): Moved => ({ lastDay, moves: [] });

/** The date of the return that a row follows, with the extension or without it. */
function dateFollowed(
  follows: Exclude<Row["follows"], "tax year">,
  isExtended: boolean,
  { payment, regular, extended }: ClientDates
): DueDate {
  switch (follows) {
    case "payment":
      return payment;
    case "regular return":
      return regular;
    case "extended return":
      return isExtended ? extended : regular;
  }
}

/**
 * Deadlines that other law ties to a tax year or to the due date of its return, such as contributions to retirement plans, the gift
 * tax return and the report of foreign accounts.
 *
 * The rules say of each which date of the return it equals, or the month and day after the tax year, and whether an extension moves
 * it. A row without an act is not moved for weekends or postponements, because the earlier date is safe. A report is moved for
 * weekends alone: the announcement of a postponement must name it.
 *
 * @param taxYear - Calendar or fiscal tax year. Dates of the calendar year are left out for a fiscal year.
 * @param filerType - Filer type.
 * @param circumstances - Residence and disaster postponement.
 * @param subject - Which deadlines, or all.
 * @param rules - Companion dates, due dates, holidays, postponements.
 * @returns The deadlines in the order of the table.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see rules/companion-dates.json for the law behind each date
 */
export function companionDates(
  taxYear: TaxYear,
  filerType: FilerType,
  circumstances: Circumstances,
  subject: CalendarSubject | "all",
  rules: CompanionRules
): readonly SeasonDate[] {
  const ofReturn = clientDates(taxYear, filerType, circumstances, rules);
  requireReach(rules.companionDates, taxYear.lastDay);

  const applies = ({ subjects, filerTypes, calendarYear, fromTaxYear = 0 }: Row): boolean =>
    (subject === "all" || subjects.includes(subject)) &&
    filerTypes?.includes(filerType) !== false &&
    !(calendarYear === true && isFiscalYear(taxYear)) &&
    yearOf(taxYear.firstDay) >= fromTaxYear;

  const fromTaxYear = ({ act, day = 0, source }: Row, month = 0): Moved => {
    const statutory = dateAfterTaxYear(taxYear, month, day);
    if (act === undefined) return unmoved(statutory);
    return dueDate(act, statutory, source, act === "report" ? {} : circumstances, rules);
  };
  const dateOf = (row: Row, isExtended: boolean): Moved => {
    const { follows, month, monthWithoutExtension = month, monthsAfter } = row;
    if (follows === "tax year") return fromTaxYear(row, isExtended ? month : monthWithoutExtension);
    const followed = dateFollowed(follows, isExtended, ofReturn);
    if (monthsAfter === undefined) return followed;
    return unmoved(addMonths(followed.statutory, monthsAfter));
  };

  return rules.companionDates.rows.filter(applies).map((row) => {
    const { lastDay: date, moves } = dateOf(row, true);
    const dateWithoutExtension = row.extension === "moved" ? dateOf(row, false).lastDay : date;
    const { what: label, extension, source } = row;
    return { label, date, dateWithoutExtension, extension, moves, source };
  });
}
