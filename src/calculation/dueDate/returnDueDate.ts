import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilerType } from "../filerType";
import type { TaxYear } from "../taxYear";
import { dayAfterTaxYear } from "./dayAfterTaxYear";
import { dueDate, type Circumstances, type DueDate, type MovingRules } from "./dueDate";

/** The rules behind the dates of a return. */
export type ReturnDateRules = MovingRules & Pick<Rulebook, "returnDueDate" | "extensionOfTime">;

/**
 * Due date of a return without any request: also the last day to ask for the extension, and the day from which failure to
 * file and failure to pay count when nothing was asked.
 *
 * The 15th day of the fourth month; of the sixth for a citizen or resident living and working abroad, whose time to file and to
 * pay is longer without asking, and for a nonresident without wages subject to withholding.
 *
 * @param taxYear - Calendar or fiscal tax year.
 * @param filerType - Who files.
 * @param circumstances - Residence and disaster relief.
 * @param rules - Due dates, holidays, postponements.
 * @returns The due date with its moves.
 * @throws NotInTableError for a tax year whose dates are not held.
 * @see 26 U.S.C. 6072(a), (c); 26 CFR 1.6081-5(a)(5), (6); 26 CFR 1.6081-4(b)(2)
 *
 * @example
 * returnDueDate(calendarTaxYear(2023), "abroad", {}, rulebook).lastDay //=> "2024-06-17"
 */
export function returnDueDate(
  taxYear: TaxYear,
  filerType: FilerType,
  circumstances: Circumstances,
  rules: ReturnDateRules
): DueDate {
  const { figures, source } = entryOn(rules.returnDueDate, taxYear.lastDay);
  const months = {
    resident: figures.regularMonth,
    "out of country": figures.outOfCountryMonth,
    nonresident: figures.nonresidentMonth,
  } satisfies Record<FilerType, unknown>;
  const statutory = dayAfterTaxYear(
    taxYear,
    months[filerType].toNumber(),
    figures.dayOfMonth.toNumber()
  );
  return dueDate("return", statutory, source, circumstances, rules);
}
