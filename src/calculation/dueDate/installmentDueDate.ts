import type { Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilerType } from "../filerType";
import type { TaxYear } from "../taxYear";
import { dateAfterTaxYear } from "./dateAfterTaxYear";
import type { DisasterPostponement } from "./disasterPostponement";
import { dueDate, type DueDate, type MovingRules } from "./dueDate";
import type { InstallmentNumber } from "./installmentNumbers";

const MONTHS_OF_THE_YEAR = 12;

/**
 * Due date of an estimated tax installment.
 *
 * A nonresident alien without wages subject to withholding has three: the first two months after everyone else's first. Weekends and
 * holidays of the District of Columbia move it; a state's Patriots' Day does not (Rev. Rul. 2015-13).
 *
 * @param taxYear - The year whose tax is estimated, calendar or fiscal.
 * @param filerType - Filer type in that year.
 * @param number - One of the installments of that filer type.
 * @param postponement - Disaster postponement for the client's address, if any.
 * @param rules - Installment dates, holidays, postponements.
 * @returns The due date with its moves.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @throws RangeError for a number that the filer type does not have.
 * @see 26 U.S.C. 6654(c)(2), (j)(2), (k)
 *
 * @example
 * installmentDueDate(calendarTaxYear(2021), "resident", 4, undefined, rulebook).lastDay //=> "2022-01-18"
 */
export function installmentDueDate(
  taxYear: TaxYear,
  filerType: FilerType,
  number: InstallmentNumber,
  postponement: DisasterPostponement | undefined,
  rules: MovingRules & Pick<Rulebook, "installments">
): DueDate {
  const { figures, source } = entryOn(rules.installments, taxYear.lastDay);
  const months: readonly Decimal[] =
    filerType === "nonresident" ? figures.nonresidentMonths : figures.months;
  const month = months[number - 1];
  if (month === undefined)
    throw new RangeError(`${filerType}: there is no installment ${String(number)}`);
  const statutory = dateAfterTaxYear(
    taxYear,
    month.toNumber() - MONTHS_OF_THE_YEAR,
    figures.dayOfMonth.toNumber()
  );
  return dueDate("installment", statutory, source, { postponement }, rules);
}
