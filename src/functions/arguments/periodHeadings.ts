import type { AnnualizationPeriod } from "../../calculation/estimatedTax/annualizationPeriods";
import type { TaxYear } from "../../calculation/taxYear";
import { monthOf, type CalendarDate } from "../../calendar/calendarDate";
import { MONTHS, shortDate } from "../../calendar/writtenDate";
import { cellValue, shown, type CellValue } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { readDate } from "./date";

/** Names of months, of three letters or more. */
const MONTH_NAME = /\b(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*/g;
/** A first and a last date without their spaces, as the form prints them: 1/1/25–3/31/25. */
const DATES = /^(\d{1,2})\/1(?:\/\d{2,4})?[-–—](\d{1,2}\/\d{1,2})(?:\/(?:\d\d)?(\d\d))?$/;
const LONGEST_HEADING = 60;

type Ends = readonly Pick<AnnualizationPeriod, "lastDay">[];

const isShortFor = (name: string, month: string): boolean =>
  month.toLowerCase().startsWith(name.slice(0, 3));
const nameOf = (month: number): string => MONTHS[month - 1] ?? "";

/**
 * The headings of the periods of a tax year.
 *
 * @example
 * // calendar year //=> ["January–March", "January–May", "January–August", "January–December"]
 */
export function periodHeadings({ firstDay }: TaxYear, ends: Ends): readonly string[] {
  const first = nameOf(monthOf(firstDay));
  return ends.map(({ lastDay }) => `${first}–${nameOf(monthOf(lastDay))}`);
}

/** Whether a heading is a period that begins with a month and ends on a date. It can name the end alone. */
function isPeriod(value: CellValue, firstMonth: number, lastDay: CalendarDate): boolean {
  if (typeof value === "string" && value.length <= LONGEST_HEADING) {
    const [, begins, end, year] = DATES.exec(value.replace(/\s/g, "")) ?? [];
    if (end !== undefined) {
      const same = shortDate(lastDay);
      const [sameEnd, sameYear] = [same.slice(0, -5), same.slice(-2)];
      return Number(begins) === firstMonth && end === sameEnd && (year ?? sameYear) === sameYear;
    }
    const names = value.toLowerCase().match(MONTH_NAME) ?? [];
    if (names.length > 0 && !/\d/.test(value)) {
      const months = names.map((name) => MONTHS.findIndex((month) => isShortFor(name, month)) + 1);
      const [first = 0] = names.length === 1 ? [firstMonth] : months;
      return names.length <= 2 && first === firstMonth && months.at(-1) === monthOf(lastDay);
    }
  }
  return readDate(value) === lastDay;
}

/**
 * Refuses headings that are not the four periods of the tax year in their order.
 *
 * @param name - The argument, for the error message.
 * @param headings - The cells above the amounts.
 * @param taxYear - The year.
 * @param ends - Its periods.
 * @throws InputError with the first heading that does not fit.
 */
export function requireHeadings(
  name: string,
  headings: readonly unknown[],
  taxYear: TaxYear,
  ends: Ends
): void {
  const firstMonth = monthOf(taxYear.firstDay);
  const all = periodHeadings(taxYear, ends).join(", ");
  ends.forEach(({ lastDay }, index) => {
    const value = cellValue(headings[index]);
    if (isPeriod(value, firstMonth, lastDay)) return;
    throw new InputError(
      `${name} row 1, column ${String(index + 2)}`,
      `${shown(value)} is not the period of this column. Enter the headings ${all}, in this order.`
    );
  });
}
