import { addDays, addMonths, yearOf, type CalendarDate } from "../../calendar/calendarDate";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { calendarTaxYear } from "../taxYear";

/** Tests of the foreign earned income exclusion: 330 full days abroad in twelve months, or a full tax year as a resident abroad. */
export const QUALIFYING_TESTS = ["physical presence", "bona fide residence"] as const;

/** A test of the foreign earned income exclusion. */
export type QualifyingTest = (typeof QUALIFYING_TESTS)[number];

/** First day of the first full calendar year that begins on or after a date. */
function firstFullYearFrom(date: CalendarDate): CalendarDate {
  const { firstDay } = calendarTaxYear(yearOf(date));
  return firstDay === date ? date : addMonths(firstDay, 12);
}

/**
 * Extended due date to ask for on Form 2350, line 1, for a client who meets a test of the foreign earned income exclusion only after
 * the due date of the return.
 *
 * Twelve months from the first full day abroad for physical presence, or from the first day of the next full tax year for bona fide
 * residence, and 30 days more. Weekends and holidays do not move it, because the form takes the date as entered. The 90 days for
 * moving expenses are not calculated.
 *
 * @param firstFullDay - First full day of 24 hours abroad.
 * @param test - The test that the client expects to meet. Bona fide residence takes calendar years.
 * @param rules - Months and days of the form.
 * @returns The date.
 * @throws NotInTableError for a date that the table does not cover.
 * @see Form 2350, instructions for line 1; 26 CFR 1.911-7(c)
 *
 * @example
 * abroadDate("2025-06-11", "physical presence", rulebook) //=> "2026-07-11"
 */
export function abroadDate(
  firstFullDay: CalendarDate,
  test: QualifyingTest,
  rules: Pick<Rulebook, "form2350">
): CalendarDate {
  const begins = test === "physical presence" ? firstFullDay : firstFullYearFrom(firstFullDay);
  const { months, days } = entryOn(rules.form2350, begins).figures;
  return addDays(addMonths(begins, months.toNumber()), days.toNumber());
}
