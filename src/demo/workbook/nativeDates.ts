import { type CalendarDate, dayOfMonthOf, monthOf, yearOf } from "../../calendar/calendarDate";
import { dateFromSerial } from "../../calendar/dateSerial";
import { cellsOf, FunctionError, number } from "./nativeArguments";
import type { EngineValue } from "./functionBridge";

/** The days off of a week that begins on Monday, from a text such as 0000011 or the number that stands for it. */
function daysOff(value: EngineValue | undefined): readonly boolean[] {
  const [cell] = cellsOf(value);
  if (cell?.kind === 2) {
    if (!/^(?!1{7})[01]{7}$/.test(cell.value)) throw new FunctionError("#VALUE!");
    return Array.from(cell.value, (mark) => mark === "1");
  }
  const code = number(value, 1);
  const last = code <= 7 ? (((code + 5) % 7) + 7) % 7 : (code + 2) % 7;
  const isPair = code >= 1 && code <= 7;
  if (!isPair && !(code >= 11 && code <= 17)) throw new FunctionError("#NUM!");
  const first = isPair ? (last + 6) % 7 : last;
  return Array.from({ length: 7 }, (_day, index) => index === last || index === first);
}

class WorkCalendar {
  readonly #off: readonly boolean[];
  readonly #holidays: ReadonlySet<number>;

  constructor(weekend: EngineValue | undefined, holidays: EngineValue | undefined) {
    this.#off = daysOff(weekend);
    const days = cellsOf(holidays).filter(({ kind }) => kind !== 0);
    this.#holidays = new Set(days.map((day) => Math.floor(number(day))));
  }

  /** Serial 2 of the 1900 date system is a Monday by Excel's reckoning. */
  isWorkday(serial: number): boolean {
    return this.#off[(serial + 5) % 7] !== true && !this.#holidays.has(serial);
  }
}

const LONGEST_SPAN = 100_000;

/** WORKDAY.INTL: the workday that many workdays away. */
export function workday(values: readonly EngineValue[]): number {
  const calendar = new WorkCalendar(values[2], values[3]);
  let serial = Math.floor(number(values[0]));
  const days = Math.trunc(number(values[1]));
  if (Math.abs(days) > LONGEST_SPAN) throw new FunctionError("#NUM!");
  for (let left = Math.abs(days); left > 0;) {
    serial += Math.sign(days);
    if (serial < 0) throw new FunctionError("#NUM!");
    if (calendar.isWorkday(serial)) left -= 1;
  }
  return serial;
}

/** NETWORKDAYS.INTL: the workdays of a period, both ends included. */
export function networkDays(values: readonly EngineValue[]): number {
  const calendar = new WorkCalendar(values[2], values[3]);
  const [start, end] = [Math.floor(number(values[0])), Math.floor(number(values[1]))];
  const [first, last] = [Math.min(start, end), Math.max(start, end)];
  if (last - first > LONGEST_SPAN) throw new FunctionError("#NUM!");
  let count = 0;
  for (let serial = first; serial <= last; serial += 1) if (calendar.isWorkday(serial)) count += 1;
  return start <= end ? count : -count;
}

const DAY = 86_400_000;
/** December 30, 1899: the number of days since it is the serial number of a date after February 1900. */
const ZERO = Date.UTC(1899, 11, 30);
/** February 29, 1900, which Excel counts although it did not exist. */
const NO_DATE = 60;
/** The days of January. */
const JANUARY = 31;
/** December 31, 9999. */
const LAST = 2_958_465;

/** A part of the date with a serial number: YEAR, MONTH and DAY. */
function datePart(
  part: (date: CalendarDate) => number,
  partBefore: (isJanuary: boolean, serial: number) => number
) {
  return (values: readonly EngineValue[]): number => {
    const serial = Math.floor(number(values[0]));
    const date = dateFromSerial(serial);
    if (date !== undefined) return part(date);
    if (serial < 0 || serial > LAST) throw new FunctionError("#NUM!");
    return partBefore(serial <= JANUARY, serial);
  };
}

/** YEAR of a worksheet date; like MONTH and DAY, it has a day 0 and a February 29 in 1900. */
export const year = datePart(yearOf, () => 1900);
/** MONTH of a worksheet date. */
export const month = datePart(monthOf, (isJanuary) => (isJanuary ? 1 : 2));
/** DAY of a worksheet date. */
export const day = datePart(dayOfMonthOf, (isJanuary, serial) =>
  isJanuary ? serial : serial - JANUARY
);

/** DATE: the serial number of a date. */
export function dateOfParts(values: readonly EngineValue[]): number {
  const [given = 0, months = 0, days = 0] = values.map((value) => Math.floor(number(value)));
  const years = given >= 0 && given < 1900 ? given + 1900 : given;
  const first = (Date.UTC(years, months - 1, 1) - ZERO) / DAY;
  const serial = (first > NO_DATE ? first : first - 1) + days - 1;
  if (given < 0 || given > 9999 || serial < 0 || serial > LAST) throw new FunctionError("#NUM!");
  return serial;
}

/** WEEKDAY: the day of the week, by the number that says which day is the first. */
export function weekday(values: readonly EngineValue[]): number {
  const serial = Math.floor(number(values[0]));
  const type = Math.floor(number(values[1], 1));
  if (serial < 0 || serial > LAST) throw new FunctionError("#NUM!");
  const fromSunday = (serial + 6) % 7;
  if (type === 3) return (fromSunday + 6) % 7;
  const first = type === 1 ? 0 : type === 2 ? 1 : type - 10;
  if (type > 2 && !(first >= 1 && first <= 7)) throw new FunctionError("#NUM!");
  if (type < 1) throw new FunctionError("#NUM!");
  return ((fromSunday - first + 7) % 7) + 1;
}
