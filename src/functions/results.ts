import type { CalendarDate } from "../calendar/calendarDate";
import { serialFromDate } from "../calendar/dateSerial";
import type { Decimal } from "../money/dollars";
import type { Source } from "../rules/source";
import { formattedNumbers } from "./numberFormats";

/** What a function hands back to a cell. */
export type AnswerCell =
  | string
  | number
  | boolean
  | CustomFunctions.Error
  | { readonly type: string; readonly basicValue: number; readonly numberFormat: string };

/** Cells of a spilled answer, row by row, all rows of one length. */
export type AnswerTable = AnswerCell[][];

/** Nothing in this cell. A null would come out as zero. */
export const EMPTY = "";

const DAY_FORMAT = "yyyy-mm-dd";
const MONEY_FORMAT = "#,##0.00";
const WHOLE_DOLLAR_FORMAT = "#,##0";
const PERCENT_FORMAT = "0.00%";

function formatted(value: number, numberFormat: string): AnswerCell {
  switch (formattedNumbers()) {
    case "double":
      return { type: "Double", basicValue: value, numberFormat };
    case "formatted number":
      return { type: "FormattedNumber", basicValue: value, numberFormat };
    case "plain":
      return value;
  }
}

/** A day as a worksheet date. */
export function dayCell(day: CalendarDate): AnswerCell {
  return formatted(serialFromDate(day), DAY_FORMAT);
}

/** A day that rests on something to be known beside it, shown where the host takes a format. */
export function markedDayCell(day: CalendarDate, mark: string): AnswerCell {
  return formatted(serialFromDate(day), mark === "" ? DAY_FORMAT : `${DAY_FORMAT}" (${mark})"`);
}

/** Dollars and cents, rounded already. */
export function moneyCell(amount: Decimal): AnswerCell {
  return formatted(amount.toNumber(), MONEY_FORMAT);
}

/** Whole dollars, rounded already. */
export function wholeDollarCell(amount: Decimal): AnswerCell {
  return formatted(amount.toNumber(), WHOLE_DOLLAR_FORMAT);
}

/** A fraction, shown as a percentage. */
export function fractionCell(fraction: Decimal): AnswerCell {
  return formatted(fraction.toNumber(), PERCENT_FORMAT);
}

/** A cell for a value that a row may lack. */
export function optional<Value>(
  value: Value | undefined,
  cell: (value: Value) => AnswerCell
): AnswerCell {
  return value === undefined ? EMPTY : cell(value);
}

/** The source of a rate; an assumed one has none. */
export function rateCitation(source: Source | undefined): string {
  return source ? citation(source) : "assumed rate, not published";
}

/** A citation, marked where the figure was not read in the official text. */
export function citation(source: Source): string {
  switch (source.confidence) {
    case "official":
      return source.citation;
    case "secondary":
      return `${source.citation} (as reported elsewhere)`;
    case "memory":
      return `${source.citation}${fromMemory(source)}`;
  }
}

/** What an answer bears that rests on memory alone; nothing otherwise. */
export function fromMemory({ confidence }: Source): string {
  return confidence === "memory" ? " (from memory: check)" : "";
}
