import type { LatePayment } from "../calculation/interest/underpaymentInterest";
import type { TaxYear } from "../calculation/taxYear";
import { InputError } from "../inputError";
import { isEmptyCell } from "./cells";
import { day as readDay } from "./dayArguments";
import { money } from "./moneyArguments";

/**
 * Reads payments from rows of day and amount, in any order; empty rows are passed over.
 *
 * @param name - The argument, for the message.
 * @param argument - A block two columns wide, or nothing.
 * @param taxYear - The year paid for: no payment lies before it begins.
 * @returns The payments, rising by day; none where the argument is left out.
 * @throws InputError naming the row at fault.
 */
export function payments(
  name: string,
  argument: unknown,
  taxYear: TaxYear
): readonly LatePayment[] {
  if (argument === null || argument === undefined) return [];
  const rows = Array.isArray(argument) ? (argument as readonly unknown[]) : [argument];
  const begins = taxYear.firstDay;
  const found: LatePayment[] = [];
  rows.forEach((row, index) => {
    const cells = Array.isArray(row) ? (row as readonly unknown[]) : [row];
    const place = `${name} row ${String(index + 1)}`;
    if (cells.length !== 2) {
      throw new InputError(
        name,
        `must be two columns wide, day and amount; this is ${String(cells.length)}`
      );
    }
    if (cells.every((cell) => isEmptyCell(cell) || cell === 0)) return;
    const day = readDay(place, cells[0]);
    if (day < begins)
      throw new InputError(place, `${day} is before the tax year begins, ${begins}`);
    found.push({ day, amount: money(place, cells[1]) });
  });
  if (found.length === 0)
    throw new InputError(name, "has no payment in it; leave it out if nothing was paid");
  return found.sort((one, other) => (one.day < other.day ? -1 : one.day > other.day ? 1 : 0));
}
