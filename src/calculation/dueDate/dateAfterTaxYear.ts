import { addDays, addMonths, type CalendarDate } from "../../calendar/calendarDate";
import type { TaxYear } from "../taxYear";

/**
 * The date the law calls "the n-th day of the m-th month" after a tax year ends.
 *
 * @param taxYear - The tax year.
 * @param month - Months after its end; 1 is the month that follows it, zero and below are months of the year itself.
 * @param dayOfMonth - Day of that month.
 * @returns The date, not moved for weekends and holidays.
 *
 * @example
 * dateAfterTaxYear(calendarTaxYear(2025), 4, 15) //=> "2026-04-15"
 */
export function dateAfterTaxYear(
  taxYear: TaxYear,
  month: number,
  dayOfMonth: number
): CalendarDate {
  const firstOfNextMonth = addDays(taxYear.lastDay, 1);
  return addDays(addMonths(firstOfNextMonth, month - 1), dayOfMonth - 1);
}
