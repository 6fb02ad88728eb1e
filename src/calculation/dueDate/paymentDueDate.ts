import { entryOn } from "../../rules/datedTable";
import type { FilerType } from "../filerType";
import type { TaxYear } from "../taxYear";
import { dateAfterTaxYear } from "./dateAfterTaxYear";
import { dueDate, type Circumstances, type DueDate } from "./dueDate";
import type { ReturnDateRules } from "./returnDueDate";

/**
 * Payment due date: last day to pay without interest.
 *
 * Neither an extension nor being out of the country moves it, because section 6601(b)(1) disregards extensions of the time to
 * pay. A nonresident alien without wages subject to withholding pays with the return in the sixth month.
 *
 * @param taxYear - Calendar or fiscal tax year.
 * @param filerType - Filer type.
 * @param circumstances - Residence and disaster postponement.
 * @param rules - Due dates, holidays, postponements.
 * @returns The due date with its moves. Interest on a late payment counts from its `countedFrom`.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see 26 U.S.C. 6151(a), 6601(b)(1), 6072(c)
 *
 * @example
 * paymentDueDate(calendarTaxYear(2023), "out of country", {}, rulebook).lastDay //=> "2024-04-15"
 */
export function paymentDueDate(
  taxYear: TaxYear,
  filerType: FilerType,
  circumstances: Circumstances,
  rules: ReturnDateRules
): DueDate {
  const { figures, source } = entryOn(rules.returnDueDate, taxYear.lastDay);
  const month = filerType === "nonresident" ? figures.nonresidentMonth : figures.regularMonth;
  const statutory = dateAfterTaxYear(taxYear, month.toNumber(), figures.dayOfMonth.toNumber());
  return dueDate("payment", statutory, source, circumstances, rules);
}
