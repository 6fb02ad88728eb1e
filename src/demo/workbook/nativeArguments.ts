import { Decimal } from "decimal.js";
import { parseUsDate } from "../../calendar/parseUsDate";
import type { EngineValue } from "./functionBridge";

/** An error as the value of a function. */
export class FunctionError extends Error {
  constructor(readonly code: string) {
    super(code);
  }
}

/** Excel compares and rounds numbers by their first fifteen digits. */
const DIGITS = 15;
const MINUTES_PER_DAY = 1_440;
const TIME = /^(\d{1,2}):(\d{2})(?::(\d{2}))?(?:\s*([AP])M)?$/i;
const AMOUNT = /^([+-]?)\$?([+-]?)((?:\d+|\d{1,3}(?:,\d{3})+)(?:\.\d*)?|\.\d+)(e[+-]?\d+)?(%?)$/i;

/** A number with the digits that Excel compares and rounds. */
export function atFifteenDigits(number: number): number {
  return Number.isInteger(number) ? number : Number(number.toPrecision(DIGITS));
}

/** A number with those digits, for exact calculation. */
export function decimal(number: number): Decimal {
  return new Decimal(atFifteenDigits(number));
}

/** A text as a number, as VALUE reads it in the United States. */
export function numberOfText(given: string): number {
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

/** The cells of an argument. */
export function cellsOf(value: EngineValue | undefined): readonly EngineValue[] {
  if (value === undefined) return [];
  return value.kind === 5 ? value.rows.flat() : [value];
}

/** An argument that is one number. */
export function number(value: EngineValue | undefined, ifOmitted?: number): number {
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
