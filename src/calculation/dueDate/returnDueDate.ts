import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilerType } from "../filerType";
import type { TaxYear } from "../taxYear";
import { dateAfterTaxYear } from "./dateAfterTaxYear";
import { dueDate, type Circumstances, type DueDate, type MovingRules } from "./dueDate";

/** The rules that set the dates of a return. */
export type ReturnDateRules = MovingRules & Pick<Rulebook, "returnDueDate" | "extensionOfTime">;

/**
 * Regular due date of a return. It is also the deadline to request the extension, and the date from which both penalties count
 * if no extension was requested.
 *
 * The 15th day of the fourth month. The 15th day of the sixth month for a citizen or resident out of the country, who has two
 * more months to file and pay without a request, and for a nonresident alien without wages subject to withholding.
 *
 * @param taxYear - Calendar or fiscal tax year.
 * @param filerType - Filer type.
 * @param circumstances - Residence and disaster postponement.
 * @param rules - Due dates, holidays, postponements.
 * @returns The due date with its moves.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see 26 U.S.C. 6072(a), (c); 26 CFR 1.6081-5(a)(5), (6); 26 CFR 1.6081-4(b)(2)
 *
 * @example
 * returnDueDate(calendarTaxYear(2023), "out of country", {}, rulebook).lastDay //=> "2024-06-17"
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
  const statutory = dateAfterTaxYear(
    taxYear,
    months[filerType].toNumber(),
    figures.dayOfMonth.toNumber()
  );
  return dueDate("return", statutory, source, circumstances, rules);
}
