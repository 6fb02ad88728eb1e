import { addMonths, lastDayOfMonth, type CalendarDate } from "../../calendar/calendarDate";
import { Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilerType } from "../filerType";
import type { TaxYear } from "../taxYear";

const MONTHS_OF_A_YEAR = 12;

/** A period whose income is annualized for an installment. It begins on the first day of the tax year. */
export interface AnnualizationPeriod {
  readonly months: number;
  /** By this the amounts of the period are multiplied: 4 for three months. */
  readonly factor: Decimal;
  readonly lastDay: CalendarDate;
}

/**
 * The periods whose income is annualized, one for each installment: the months of the tax year that end before the due date.
 *
 * Three, five, eight and twelve months; the last three of these for a nonresident alien without wages subject to withholding.
 *
 * @param taxYear - The year whose tax is estimated, calendar or fiscal.
 * @param filerType - Filer type in that year.
 * @param rules - Months of the installments.
 * @returns The periods in the order of the installments.
 * @throws NotInTableError for a tax year that the table does not cover.
 * @see 26 U.S.C. 6654(d)(2)(B)(i), (j)(2), (k)(1); Form 2210, Schedule AI, line 2
 */
export function annualizationPeriods(
  taxYear: TaxYear,
  filerType: FilerType,
  rules: Pick<Rulebook, "installments">
): readonly AnnualizationPeriod[] {
  const { figures } = entryOn(rules.installments, taxYear.lastDay);
  const dueIn: readonly Decimal[] =
    filerType === "nonresident" ? figures.nonresidentMonths : figures.months;
  return dueIn.map((month) => {
    const months = month.toNumber() - 1;
    return {
      months,
      factor: new Decimal(MONTHS_OF_A_YEAR).div(months),
      lastDay: lastDayOfMonth(addMonths(taxYear.firstDay, months - 1)),
    };
  });
}
