import { addMonths } from "../../calendar/calendarDate";
import { entryOn } from "../../rules/datedTable";
import type { FilerType } from "../filerType";
import type { TaxYear } from "../taxYear";
import { dueDate, type Circumstances, type DueDate } from "./dueDate";
import { paymentDueDate } from "./paymentDueDate";
import type { ReturnDateRules } from "./returnDueDate";

/**
 * Due date of a return with the automatic extension.
 *
 * Six months from the day the law names (April 15, not the Monday after it), then moved for weekends and holidays. Abroad the six
 * months run beside the automatic two, so that the day is the same. For a nonresident without wages they run from June 15 by
 * the words of 26 CFR 1.6081-4(a); the 2008 edition of Pub. 513 says October 15, so treat the December day with care.
 *
 * @param taxYear - Calendar or fiscal tax year.
 * @param filerType - Who files.
 * @param circumstances - Residence and disaster relief.
 * @param rules - Due dates, holidays, postponements.
 * @returns The due date with its moves.
 * @throws NotInTableError for a tax year whose dates are not held.
 * @see 26 U.S.C. 6081(a); 26 CFR 1.6081-4(a)
 *
 * @example
 * extendedDueDate(calendarTaxYear(2022), "resident", {}, rulebook).lastDay //=> "2023-10-16"
 */
export function extendedDueDate(
  taxYear: TaxYear,
  filerType: FilerType,
  circumstances: Circumstances,
  rules: ReturnDateRules
): DueDate {
  const { statutory: regular } = paymentDueDate(taxYear, filerType, circumstances, rules);
  const extension = entryOn(rules.extensionOfTime, taxYear.lastDay);
  const statutory = addMonths(regular, extension.figures.months.toNumber());
  return dueDate("extended return", statutory, extension.source, circumstances, rules);
}
