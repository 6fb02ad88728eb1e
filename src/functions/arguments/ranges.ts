import { shortDate } from "../../calendar/writtenDate";
import type { CalendarDate } from "../../calendar/calendarDate";
import type { Payment } from "../../calculation/penalty/underpaymentInterest";
import { compareDates } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import { isEmptyCell } from "../cells/cellValue";
import { filledCells } from "../cells/columns";
import { InputError } from "../cells/inputError";
import { pairedRows } from "../cells/pairedRows";
import { readArgument, type RangeKind } from "./argumentKind";
import { date, dateAfterYear } from "./date";
import { dollars } from "./dollars";

/** Payments as rows of date and amount. The payments come back in order of date; a blank range is no payment. */
export const payments: RangeKind<readonly Payment[]> = {
  id: "payment-rows",
  title: "Rows of date and amount",
  description:
    "A range of two columns, a date and dollars in each row, in any order. Blank rows are ignored. If a row cannot be read, the error message gives its number. Leave the argument out if nothing was paid. No payment can be dated before the tax year begins.",
  accepted: ['{"4/15/2026",15000;46310,"$5,000"}'],
  notAccepted: ['{"4/15/2026";"10/15/2026"}', '{"4/15/2026",-5}'],
  takes: "range",
  whenBlank: { means: [] },
  read: (range, name, { taxYear }) => {
    const found: Payment[] = [];
    for (const { place, first, second } of pairedRows(name, range, "date and amount")) {
      if ([first, second].every((cell) => isEmptyCell(cell) || cell === 0)) continue;
      const paidOn = readArgument(date, place, first);
      if (taxYear !== undefined && paidOn < taxYear.firstDay)
        throw new InputError(
          place,
          `${shortDate(paidOn)} is before the tax year begins on ${shortDate(taxYear.firstDay)}. Check the date and the year.`
        );
      found.push({ date: paidOn, amount: readArgument(dollars, place, second) });
    }
    if (found.length === 0)
      throw new InputError(
        name,
        "The range has no payment. Leave the argument out if nothing was paid."
      );
    return found.sort((one, other) => compareDates(one.date, other.date));
  },
};

/** Amounts to compare: every cell of the range that is not blank. */
export const dollarRange: RangeKind<readonly Decimal[]> = {
  id: "dollar-range",
  title: "Range of dollars",
  description:
    "One cell or a range of amounts in U.S. dollars, zero or more. Blank cells are ignored.",
  accepted: ["{0;3000}", "500"],
  notAccepted: ["-1"],
  takes: "range",
  whenBlank: { enter: "Enter at least one dollar amount." },
  read: (range, name) => filledCells(name, range).map((cell) => readArgument(dollars, name, cell)),
};

/** Dates to compare, all after the tax year: every cell of the range that is not blank. */
export const dateRange: RangeKind<readonly CalendarDate[]> = {
  id: "date-range",
  title: "Range of dates",
  description:
    "One cell or a range of dates, each a worksheet date or text such as 4/15/2026, all after the tax year ends. Blank cells are ignored.",
  accepted: ['{"4/15/2026","10/15/2026"}', "46127"],
  notAccepted: ['"15/4/2026"', '"6/30/2025"'],
  takes: "range",
  whenBlank: { enter: "Enter at least one date such as 4/15/2026." },
  read: (range, name, earlier) =>
    filledCells(name, range).map((cell) => readArgument(dateAfterYear, name, cell, earlier)),
};
