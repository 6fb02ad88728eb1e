import type { Payment } from "../calculation/penalty/underpaymentInterest";
import type { TaxYear } from "../calculation/taxYear";
import { compareDates } from "../calendar/calendarDate";
import { InputError } from "../inputError";
import { isEmptyCell } from "./cells";
import { day as readDay } from "./dayArguments";
import { money } from "./moneyArguments";
import { pairedRows } from "./pairedRows";

/**
 * Reads payments from rows of day and amount, in any order; empty rows are passed over.
 *
 * @param name - The argument, for the message.
 * @param argument - A block two columns wide, or nothing.
 * @param taxYear - The year paid for: no payment lies before it begins.
 * @returns The payments, rising by day; none where the argument is left out.
 * @throws InputError naming the row at fault.
 */
export function payments(name: string, argument: unknown, taxYear: TaxYear): readonly Payment[] {
  if (argument === null || argument === undefined) return [];
  const begins = taxYear.firstDay;
  const found: Payment[] = [];
  for (const { place, first, second } of pairedRows(name, argument, "day and amount")) {
    if ([first, second].every((cell) => isEmptyCell(cell) || cell === 0)) continue;
    const day = readDay(place, first);
    if (day < begins)
      throw new InputError(place, `${day} is before the tax year begins, ${begins}`);
    found.push({ date: day, amount: money(place, second) });
  }
  if (found.length === 0)
    throw new InputError(name, "has no payment in it; leave it out if nothing was paid");
  return found.sort((one, other) => compareDates(one.date, other.date));
}
