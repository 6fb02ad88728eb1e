import type { CalendarDate } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import type { Source } from "../../rules/source";
import { formattedNumbers } from "./numberFormats";

/** What a function returns to a cell. */
export type AnswerCell =
  | string
  | number
  | boolean
  | CustomFunctions.Error
  | { readonly type: string; readonly basicValue: number; readonly numberFormat: string };

/** Cells of an answer that fills several cells, row by row, all rows of one length. */
export type AnswerTable = AnswerCell[][];

/** A blank cell. A null would show as zero. */
export const BLANK = "";

/** The short date: Excel shows it in the date order of the user's settings. */
export const DATE_FORMAT = "m/d/yyyy";
/** Dollars and cents. */
export const MONEY_FORMAT = "#,##0.00";
/** Whole dollars. */
export const WHOLE_DOLLAR_FORMAT = "#,##0";
/** A rate or a share, to a hundredth of a percent. */
export const PERCENT_FORMAT = "0.00%";

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

/** A date as a worksheet date. */
export function dateCell(date: CalendarDate): AnswerCell {
  return formatted(date, DATE_FORMAT);
}

/** Dollars and cents. The amount is rounded already. */
export function moneyCell(amount: Decimal): AnswerCell {
  return formatted(amount.toNumber(), MONEY_FORMAT);
}

/** Whole dollars. The amount is rounded already. */
export function wholeDollarCell(amount: Decimal): AnswerCell {
  return formatted(amount.toNumber(), WHOLE_DOLLAR_FORMAT);
}

/** A fraction such as 0.07, shown as a percent. */
export function percentCell(fraction: Decimal): AnswerCell {
  return formatted(fraction.toNumber(), PERCENT_FORMAT);
}

/** A cell for a value that a row may not have. */
export function cellOrBlank<Value>(
  value: Value | undefined,
  cell: (value: Value) => AnswerCell
): AnswerCell {
  return value === undefined ? BLANK : cell(value);
}

/** The citation of an interest rate. An assumed rate has none. */
export function rateCitation(source: Source | undefined): string {
  return source ? citation(source) : "assumed rate, not published";
}

/** A citation, marked where the figure was not read in the official text. */
export function citation(source: Source): string {
  switch (source.confidence) {
    case "official":
      return source.citation;
    case "secondary":
      return `${source.citation} (secondary source)`;
    case "memory":
      return `${source.citation} (unverified: check the official text)`;
  }
}
