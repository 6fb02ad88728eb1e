import { Decimal } from "decimal.js";
import { parseUsDate } from "../../calendar/parseUsDate";
import type { EngineFunction, EngineValue } from "./functionBridge";

/** An error as the value of a function. */
class FunctionError extends Error {
  constructor(readonly code: string) {
    super(code);
  }
}

/** Excel compares and rounds numbers by their first fifteen digits. */
const DIGITS = 15;
const MINUTES_PER_DAY = 1_440;
const TIME = /^(\d{1,2}):(\d{2})(?::(\d{2}))?(?:\s*([AP])M)?$/i;
const AMOUNT = /^([+-]?)\$?([+-]?)((?:\d+|\d{1,3}(?:,\d{3})+)(?:\.\d*)?|\.\d+)(e[+-]?\d+)?(%?)$/i;

function decimal(number: number): Decimal {
  return new Decimal(Number(number.toPrecision(DIGITS)));
}

/** A text as a number, as VALUE reads it in the United States. */
function numberOfText(given: string): number {
  const text = given.trim();
  const negative = /^\((.*)\)$/.exec(text)?.[1];
  if (negative !== undefined) return -numberOfText(negative);
  const [, sign, innerSign, digits = "", exponent = "", percent] = AMOUNT.exec(text) ?? [];
  if (digits !== "") {
    const number = Number(digits.replaceAll(",", "") + exponent) / (percent === "%" ? 100 : 1);
    return sign === "-" || innerSign === "-" ? -number : number;
  }
  const [, hours, minutes = "0", seconds = "0", half] = TIME.exec(text) ?? [];
  if (hours !== undefined) {
    const hour =
      half === undefined ? Number(hours) : (Number(hours) % 12) + (/p/i.test(half) ? 12 : 0);
    return (hour * 60 + Number(minutes) + Number(seconds) / 60) / MINUTES_PER_DAY;
  }
  const date = parseUsDate(text);
  if (date === undefined) throw new FunctionError("#VALUE!");
  return date;
}

function cellsOf(value: EngineValue | undefined): readonly EngineValue[] {
  if (value === undefined) return [];
  return value.kind === 5 ? value.rows.flat() : [value];
}

function number(value: EngineValue | undefined, ifOmitted?: number): number {
  const [cell, ...others] = cellsOf(value);
  if (others.length > 0) throw new FunctionError("#VALUE!");
  switch (cell?.kind) {
    case undefined:
    case 0:
      return ifOmitted ?? 0;
    case 1:
      return cell.value;
    case 2:
      return numberOfText(cell.value);
    case 3:
      return Number(cell.value);
    case 4:
      throw new FunctionError(cell.code);
    default:
      throw new FunctionError("#VALUE!");
  }
}

function finite(value: number): number {
  if (Number.isFinite(value)) return value;
  throw new FunctionError("#NUM!");
}

/** CEILING and FLOOR: a multiple of the significance; both may be negative, or the number alone. */
function multiple(round: (quotient: Decimal) => Decimal, ifZero: number | undefined) {
  return (values: readonly EngineValue[]): number => {
    const [of, significance] = [number(values[0]), number(values[1])];
    if (of === 0) return 0;
    if (significance === 0) {
      if (ifZero === undefined) throw new FunctionError("#DIV/0!");
      return ifZero;
    }
    if (of > 0 && significance < 0) throw new FunctionError("#NUM!");
    const step = decimal(significance);
    return round(decimal(of).div(step)).times(step).toNumber();
  };
}

function roundedAt(values: readonly EngineValue[]): number {
  const [of, places] = [decimal(number(values[0])), Math.trunc(number(values[1]))];
  const scale = new Decimal(10).pow(places);
  const rounded = of.abs().times(scale).round().div(scale);
  return (of.isNegative() ? rounded.neg() : rounded).toNumber();
}

function futureValue(values: readonly EngineValue[]): number {
  const [rate = 0, periods = 0, payment = 0, present = 0, type = 0] = values.map((value) =>
    number(value)
  );
  if (rate === 0) return -(present + payment * periods);
  const growth = (1 + rate) ** periods;
  return finite(-(present * growth + (payment * (1 + rate * type) * (growth - 1)) / rate));
}

function numberOfPeriods(values: readonly EngineValue[]): number {
  const [rate = 0, payment = 0, present = 0, future = 0, type = 0] = values.map((value) =>
    number(value)
  );
  if (rate === 0) return finite(-(present + future) / payment);
  const due = payment * (1 + rate * type);
  return finite(Math.log((due - future * rate) / (due + present * rate)) / Math.log(1 + rate));
}

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

function workday(values: readonly EngineValue[]): number {
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

function networkDays(values: readonly EngineValue[]): number {
  const calendar = new WorkCalendar(values[2], values[3]);
  const [start, end] = [Math.floor(number(values[0])), Math.floor(number(values[1]))];
  const [first, last] = [Math.min(start, end), Math.max(start, end)];
  if (last - first > LONGEST_SPAN) throw new FunctionError("#NUM!");
  let count = 0;
  for (let serial = first; serial <= last; serial += 1) if (calendar.isWorkday(serial)) count += 1;
  return start <= end ? count : -count;
}

type Calculate = (values: readonly EngineValue[]) => number;
type Corrected = [name: string, least: number, most: number, of: Calculate];

const CORRECTED: readonly Corrected[] = [
  ["CEILING", 2, 2, multiple((quotient) => quotient.ceil(), 0)],
  ["FLOOR", 2, 2, multiple((quotient) => quotient.floor(), undefined)],
  ["FV", 3, 5, futureValue],
  ["NETWORKDAYS.INTL", 2, 4, networkDays],
  ["NPER", 3, 5, numberOfPeriods],
  ["ROUND", 2, 2, roundedAt],
  ["VALUE", 1, 1, (values) => number(values[0])],
  ["WORKDAY.INTL", 2, 4, workday],
];

/** Functions of the calculating library whose results differ from those of Excel, in versions that do not. */
export function nativeCorrections(): Map<string, EngineFunction> {
  return new Map(
    CORRECTED.map(([name, minArity, maxArity, of]) => {
      const invoke = (values: unknown[]): EngineValue => {
        try {
          return { kind: 1, value: of(values as EngineValue[]) };
        } catch (error) {
          if (!(error instanceof FunctionError)) throw error;
          return { kind: 4, code: error.code };
        }
      };
      return [name, { minArity, maxArity, invoke }];
    })
  );
}
