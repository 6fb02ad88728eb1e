import { addDays, yearOf } from "../../calendar/calendarDate";
import type { ExtensionEffect } from "../../rules/calendarWords";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { clientDates } from "../dueDate/clientDates";
import type { Circumstances, DueDate } from "../dueDate/dueDate";
import { installmentDueDate } from "../dueDate/installmentDueDate";
import { installmentNumbers } from "../dueDate/installmentNumbers";
import type { ReturnDateRules } from "../dueDate/returnDueDate";
import type { FilerType } from "../filerType";
import { yearAfter, type TaxYear } from "../taxYear";
import type { SeasonDate } from "./seasonDate";

/** The rules that the deadlines of a return need. */
export type ReturnDeadlineRules = ReturnDateRules &
  Pick<Rulebook, "installments" | "failureToFile">;

const ORDINALS = { 1: "First", 2: "Second", 3: "Third", 4: "Fourth" } as const;

/** A deadline that equals a due date. */
function seasonDate(
  label: string,
  { lastDay, moves, source }: DueDate,
  extension: ExtensionEffect = "not moved",
  dateWithoutExtension = lastDay
): SeasonDate {
  return { label, date: lastDay, dateWithoutExtension, extension, moves, source };
}

/**
 * Deadlines of a client's return: to pay, to request the extension, to file, the new year's estimated tax installments, and the last
 * day before the minimum failure-to-file penalty.
 *
 * @param taxYear - Calendar or fiscal tax year of the return.
 * @param filerType - Filer type.
 * @param circumstances - Residence and disaster postponement.
 * @param rules - Due dates, installments, holidays, postponements, failure-to-file penalty.
 * @returns The deadlines, without the installments of a year that the tables do not cover.
 * @throws NotInTableError for a tax year that the tables do not cover.
 */
export function returnDeadlines(
  taxYear: TaxYear,
  filerType: FilerType,
  circumstances: Circumstances,
  rules: ReturnDeadlineRules
): readonly SeasonDate[] {
  const { payment, regular, extended } = clientDates(taxYear, filerType, circumstances, rules);
  const newYear = yearAfter(taxYear);
  const isNewYearCovered = newYear.lastDay <= rules.installments.knownThrough;
  const newYearName = String(yearOf(newYear.firstDay));
  const installments = isNewYearCovered
    ? installmentNumbers(filerType).map((number) =>
        seasonDate(
          `${ORDINALS[number]} ${newYearName} estimated tax installment`,
          installmentDueDate(newYear, filerType, number, circumstances.postponement, rules)
        )
      )
    : [];
  const { figures, source } = entryOn(rules.failureToFile, regular.countedFrom);
  const daysBeforeMinimum = figures.minimumAfterDays.toNumber();
  return [
    seasonDate("Pay the tax (interest starts after this date)", payment),
    seasonDate("File or request an extension", regular),
    ...installments,
    seasonDate("File the extended return", extended, "moved", regular.lastDay),
    {
      label: "Last day before the minimum failure-to-file penalty",
      date: addDays(extended.countedFrom, daysBeforeMinimum),
      dateWithoutExtension: addDays(regular.countedFrom, daysBeforeMinimum),
      extension: "moved",
      moves: [],
      source,
    },
  ];
}
