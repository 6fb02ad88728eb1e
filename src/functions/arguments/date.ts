import { calendarDate, type CalendarDate } from "../../calendar/calendarDate";
import { parseUsDate } from "../../calendar/parseUsDate";
import { dateFromSerial } from "../../calendar/dateSerial";
import { shortDate } from "../../calendar/writtenDate";
import type { TaxYear } from "../../calculation/taxYear";
import { isBlankOrZero, shown, type CellValue } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import type { CellKind } from "./argumentKind";

const FIRST_DATE = calendarDate("1900-03-01");
const LAST_DATE = calendarDate("2199-12-31");

/** Reads a worksheet date or a date as text; `undefined` when it is neither. */
export function readDate(value: CellValue): CalendarDate | undefined {
  if (typeof value === "number") return Number.isFinite(value) ? dateFromSerial(value) : undefined;
  return typeof value === "string" ? parseUsDate(value) : undefined;
}

function dateOf(value: CellValue, name: string): CalendarDate {
  const read = readDate(value);
  if (read === undefined)
    throw new InputError(name, `${shown(value)} is not a date. Enter a date such as 4/15/2026.`);
  if (read < FIRST_DATE || read > LAST_DATE)
    throw new InputError(
      name,
      `${shortDate(read)} is out of range. Enter a date from ${shortDate(FIRST_DATE)} through ${shortDate(LAST_DATE)}.`
    );
  return read;
}

/**
 * Refuses a date on or before the last date of the tax year, which is also how a workbook with the 1904 date system shows itself.
 *
 * @throws InputError when the date is not after the tax year.
 */
function requireAfterTaxYear(name: string, date: CalendarDate, { lastDay }: TaxYear): void {
  if (date > lastDay) return;
  throw new InputError(
    name,
    `${shortDate(date)} is not after the tax year ends on ${shortDate(lastDay)}. Check the year, and that the workbook does not use the 1904 date system.`
  );
}

/** A date. */
export const date: CellKind<CalendarDate> = {
  id: "date",
  title: "Date",
  description:
    "A worksheet date of the 1900 date system, or text with the month first: `4/15/2026`, `04/15/26`, `April 15, 2026` or `2026-04-15`. A time of day is ignored. Dates from 3/1/1900 through 12/31/2199 are accepted. A blank cell or 0 means no date.",
  accepted: [
    "46127",
    '"4/15/2026"',
    '"04/15/26"',
    '"April 15, 2026"',
    '"Apr 15, 2026"',
    '"2026-04-15"',
  ],
  notAccepted: ['"15/4/2026"', '"2/30/2026"', '"soon"'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { enter: "Enter a date such as 4/15/2026." },
  read: dateOf,
};

/** A date after the tax year, which is read before it: when something was done about that year's return. */
export const dateAfterYear: CellKind<CalendarDate> = {
  ...date,
  read: (value, name, earlier) => {
    const read = dateOf(value, name);
    // In a client list this reads the cell of the tax year, which may be unreadable itself.
    const { taxYear } = earlier;
    if (taxYear !== undefined) requireAfterTaxYear(name, read, taxYear);
    return read;
  },
};
