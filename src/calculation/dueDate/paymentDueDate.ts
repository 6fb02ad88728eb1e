import { entryOn } from "../../rules/datedTable";
import type { FilerType } from "../filerType";
import type { TaxYear } from "../taxYear";
import { dayAfterTaxYear } from "./dayAfterTaxYear";
import { dueDate, type Circumstances, type DueDate } from "./dueDate";
import type { ReturnDateRules } from "./returnDueDate";

/**
 * Last day to pay without interest.
 *
 * Neither a request nor living abroad moves it: section 6601(b)(1) disregards extensions of the time to pay. A nonresident
 * without wages pays with the return in the sixth month.
 *
 * @param taxYear - Calendar or fiscal tax year.
 * @param filerType - Who files.
 * @param circumstances - Residence and disaster relief.
 * @param rules - Due dates, holidays, postponements.
 * @returns The due date with its moves; interest on a payment missed counts from its `countedFrom`.
 * @throws NotInTableError for a tax year whose dates are not held.
 * @see 26 U.S.C. 6151(a), 6601(b)(1), 6072(c)
 *
 * @example
 * paymentDueDate(calendarTaxYear(2023), "abroad", {}, rulebook).lastDay //=> "2024-04-15"
 */
export function paymentDueDate(
  taxYear: TaxYear,
  filerType: FilerType,
  circumstances: Circumstances,
  rules: ReturnDateRules
): DueDate {
  const { figures, source } = entryOn(rules.returnDueDate, taxYear.lastDay);
  const month = filerType === "nonresident" ? figures.nonresidentMonth : figures.regularMonth;
  const statutory = dayAfterTaxYear(taxYear, month.toNumber(), figures.dayOfMonth.toNumber());
  return dueDate("payment", statutory, source, circumstances, rules);
}
