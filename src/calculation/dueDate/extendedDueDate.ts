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
 * Six months from the date the law names (April 15, not the Monday after it), then moved for weekends and holidays. For a
 * taxpayer out of the country the six months include the automatic two, so the date is the same. For a nonresident alien without
 * wages subject to withholding they count from June 15 under 26 CFR 1.6081-4(a). The 2008 edition of Pub. 513 says October 15,
 * so confirm the December date.
 *
 * @param taxYear - Calendar or fiscal tax year.
 * @param filerType - Filer type.
 * @param circumstances - Residence and disaster postponement.
 * @param rules - Due dates, holidays, postponements.
 * @returns The due date with its moves.
 * @throws NotInTableError for a tax year that the tables do not cover.
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
