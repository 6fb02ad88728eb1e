import { addDays, addMonths, type CalendarDate } from "../../calendar/calendarDate";
import type { TaxYear } from "../taxYear";

/**
 * The day the law names as "the n-th day of the m-th month" after a tax year ends.
 *
 * @param taxYear - The tax year.
 * @param month - Months after its end, the following month being the first; zero and below lie in the year itself.
 * @param dayOfMonth - Day of that month.
 * @returns The day, not moved for weekends and holidays.
 *
 * @example
 * dayAfterTaxYear(calendarTaxYear(2025), 4, 15) //=> "2026-04-15"
 */
export function dayAfterTaxYear(taxYear: TaxYear, month: number, dayOfMonth: number): CalendarDate {
  const firstOfNextMonth = addDays(taxYear.lastDay, 1);
  return addDays(addMonths(firstOfNextMonth, month - 1), dayOfMonth - 1);
}
