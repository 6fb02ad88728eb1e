import { calendarDate, parseCalendarDate, type CalendarDate } from "../calendar/calendarDate";
import { dateFromSerial } from "../calendar/dateSerial";
import type { DisasterPostponement } from "../calculation/dueDate/disasterPostponement";
import { calendarTaxYear, fiscalTaxYear, type TaxYear } from "../calculation/taxYear";
import { InputError } from "../inputError";
import { cellValue, isBlankOrZero, shown, type CellValue } from "./cells";

const WANTED = "give a worksheet date, or text such as 2026-04-15";
const FIRST_DAY = calendarDate("1900-03-01");
const LAST_DAY = calendarDate("2199-12-31");
/** A whole number below this is a year; a worksheet date that small lies before 1928. */
const FIRST_SERIAL_TAKEN_AS_DATE = 10_000;
const FIRST_YEAR = 1000;

function readDay(value: CellValue): CalendarDate | undefined {
  if (typeof value === "number") return Number.isFinite(value) ? dateFromSerial(value) : undefined;
  return typeof value === "string" ? parseCalendarDate(value.trim()) : undefined;
}

function dayOf(name: string, value: CellValue): CalendarDate {
  const day = readDay(value);
  if (day === undefined) throw new InputError(name, `${shown(value)} is not a date; ${WANTED}`);
  if (day < FIRST_DAY) {
    throw new InputError(name, `${day} lies before ${FIRST_DAY}, where worksheet dates begin`);
  }
  if (day > LAST_DAY)
    throw new InputError(name, `${day} lies too far ahead; no day after ${LAST_DAY} is worked out`);
  return day;
}

/**
 * Reads a day that must be given.
 *
 * @param name - The argument, for the message.
 * @param cell - Serial of the 1900 date system, its time of day dropped, or ISO text.
 * @returns The day.
 */
export function day(name: string, cell: unknown): CalendarDate {
  const value = cellValue(cell);
  if (isBlankOrZero(value)) throw new InputError(name, `is empty; ${WANTED}`);
  return dayOf(name, value);
}

/** Reads a day that may be left out; zero, which is no date, counts as left out. */
export function optionalDay(name: string, cell: unknown): CalendarDate | undefined {
  const value = cellValue(cell);
  return isBlankOrZero(value) ? undefined : dayOf(name, value);
}

/**
 * Reads a tax year: a year's number, or the last day of a fiscal year.
 *
 * @param name - The argument, for the message.
 * @param cell - A year such as 2025, as number or text, or a date.
 * @returns The tax year.
 */
export function taxYear(name: string, cell: unknown): TaxYear {
  const value = cellValue(cell);
  const wanted = "give a year such as 2025, or the last day of a fiscal year";
  if (isBlankOrZero(value)) throw new InputError(name, `is empty; ${wanted}`);
  const number = typeof value === "string" && /^\s*\d{4}\s*$/.test(value) ? Number(value) : value;
  if (typeof number === "number" && number < FIRST_SERIAL_TAKEN_AS_DATE) {
    if (Number.isInteger(number) && number >= FIRST_YEAR) return calendarTaxYear(number);
    throw new InputError(name, `${shown(value)} is not a tax year; ${wanted}`);
  }
  const lastDay = readDay(value);
  if (lastDay === undefined)
    throw new InputError(name, `${shown(value)} is not a tax year; ${wanted}`);
  const fiscal = fiscalTaxYear(lastDay);
  if (!fiscal)
    throw new InputError(
      name,
      `${lastDay} is not the last day of a month, so no fiscal year ends on it; ${wanted}`
    );
  return fiscal;
}

/**
 * Reads a disaster-relief period from its two days, both or neither given.
 *
 * @returns `undefined` when neither is given.
 */
export function disasterPostponement(
  postponementBegins: unknown,
  postponementEnds: unknown
): DisasterPostponement | undefined {
  const begins = optionalDay("postponementBegins", postponementBegins);
  const until = optionalDay("postponementEnds", postponementEnds);
  if (begins === undefined && until === undefined) return undefined;
  if (begins === undefined)
    throw new InputError(
      "postponementBegins",
      "is empty while postponedTo is given; give both days of the relief, or neither"
    );
  if (until === undefined)
    throw new InputError(
      "postponementEnds",
      "is empty while reliefBegins is given; give both days of the relief, or neither"
    );
  if (until < begins)
    throw new InputError("postponementEnds", `${until} is before the relief begins, ${begins}`);
  return { begins, postponementEnds: until };
}

/**
 * Refuses a day before the tax year has ended, where a workbook that counts from 1904 shows itself.
 *
 * @throws InputError when the day is not after the year's last.
 */
export function requireAfterTaxYear(name: string, given: CalendarDate, year: TaxYear): void {
  if (given > year.lastDay) return;
  throw new InputError(
    name,
    `${given} is not after the tax year ends, ${year.lastDay}; check the year, and that the workbook does not count dates from 1904`
  );
}
