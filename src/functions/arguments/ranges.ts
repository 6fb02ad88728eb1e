import { shortDate } from "../../calendar/writtenDate";
import type { CalendarDate } from "../../calendar/calendarDate";
import type { Payment } from "../../calculation/penalty/underpaymentInterest";
import { compareDates } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import { isEmptyCell } from "../cells/cellValue";
import { filledCells, isBlankRange, rowsOf } from "../cells/columns";
import { InputError } from "../cells/inputError";
import { pairedRows } from "../cells/pairedRows";
import { readRows } from "../cells/readRows";
import { readArgument, type RangeKind } from "./argumentKind";
import { date, dateAfterYear } from "./date";
import { dollars } from "./dollars";

/** Payments as rows of date and amount. The payments come back in order of date; a blank range is no payment. */
export const payments: RangeKind<readonly Payment[]> = {
  id: "payment-rows",
  title: "Rows of date and amount",
  description:
    "A range of two columns, a date and dollars in each row, in any order. Blank rows are ignored. The error message gives the number of each row that cannot be read. A blank range means that nothing was paid. No payment can be dated before the tax year begins.",
  accepted: ['{"4/15/2026",15000;46310,"$5,000"}'],
  notAccepted: ['{"4/15/2026";"10/15/2026"}', '{"4/15/2026",-5}'],
  takes: "range",
  whenBlank: { means: [] },
  read: (range, name, { taxYear }) => {
    if (isBlankRange(range)) return [];
    const pairs = pairedRows(name, range, "date and amount").filter(
      ({ first, second }) => ![first, second].every((cell) => isEmptyCell(cell) || cell === 0)
    );
    const found = readRows(name, pairs, ({ place, first, second }): Payment => {
      const paidOn = readArgument(date, place, first);
      if (taxYear !== undefined && paidOn < taxYear.firstDay)
        throw new InputError(
          place,
          `${shortDate(paidOn)} is before the tax year begins on ${shortDate(taxYear.firstDay)}. Check the date and the year.`
        );
      return { date: paidOn, amount: readArgument(dollars, place, second) };
    });
    return found.sort((one, other) => compareDates(one.date, other.date));
  },
};

/** The cells of a range that are not blank, each with its place for an error message: a single cell has no row. */
function placedCells(
  name: string,
  range: unknown
): readonly { readonly place: string; readonly cell: unknown }[] {
  filledCells(name, range);
  const rows = rowsOf(range);
  const isOne = rows.length === 1 && rows[0]?.length === 1;
  const isAcross = rows.length === 1;
  return rows.flatMap((row, index) =>
    row.flatMap((cell, column) => {
      if (isEmptyCell(cell)) return [];
      const at = isAcross ? `column ${String(column + 1)}` : `row ${String(index + 1)}`;
      return [{ place: isOne ? name : `${name} ${at}`, cell }];
    })
  );
}

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
  read: (range, name) =>
    readRows(name, placedCells(name, range), ({ place, cell }) =>
      readArgument(dollars, place, cell)
    ),
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
    readRows(name, placedCells(name, range), ({ place, cell }) =>
      readArgument(dateAfterYear, place, cell, earlier)
    ),
};
