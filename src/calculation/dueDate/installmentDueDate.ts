import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { TaxYear } from "../taxYear";
import { dateAfterTaxYear } from "./dateAfterTaxYear";
import type { DisasterPostponement } from "./disasterPostponement";
import { dueDate, type DueDate, type MovingRules } from "./dueDate";

/** The four installments of estimated tax. */
export type InstallmentNumber = 1 | 2 | 3 | 4;

const MONTHS_OF_THE_YEAR = 12;

/**
 * Due date of an estimated tax installment.
 *
 * Weekends and holidays of the District of Columbia move it; a state's Patriots' Day does not (Rev. Rul. 2015-13).
 *
 * @param taxYear - The year whose tax is estimated, calendar or fiscal.
 * @param number - First to fourth.
 * @param postponement - Disaster postponement for the client's address, if any.
 * @param rules - Installment dates, holidays, postponements.
 * @returns The due date with its moves.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see 26 U.S.C. 6654(c)(2), (k)
 *
 * @example
 * installmentDueDate(calendarTaxYear(2021), 4, undefined, rulebook).lastDay //=> "2022-01-18"
 */
export function installmentDueDate(
  taxYear: TaxYear,
  number: InstallmentNumber,
  postponement: DisasterPostponement | undefined,
  rules: MovingRules & Pick<Rulebook, "installments">
): DueDate {
  const { figures, source } = entryOn(rules.installments, taxYear.lastDay);
  const [first, second, third, fourth] = figures.months;
  const monthOfYear = { 1: first, 2: second, 3: third, 4: fourth }[number].toNumber();
  const statutory = dateAfterTaxYear(
    taxYear,
    monthOfYear - MONTHS_OF_THE_YEAR,
    figures.dayOfMonth.toNumber()
  );
  return dueDate("installment", statutory, source, { postponement }, rules);
}
