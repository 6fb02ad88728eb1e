import { dateFromSerial } from "../../calendar/dateSerial";
import { shortDate } from "../../calendar/writtenDate";
import { catalog } from "../../functions/catalog";
import {
  DATE_FORMAT,
  MONEY_FORMAT,
  PERCENT_FORMAT,
  WHOLE_DOLLAR_FORMAT,
} from "../../functions/cells/answerCell";
import { isHostError } from "../../functions/cells/hostError";
import { withFormattedNumbers } from "../../functions/cells/numberFormats";
import { formulaCall } from "./formulaCall";

/** A cell of an answer as the page shows it. */
export interface ShownCell {
  readonly text: string;
  readonly kind: "text" | "number" | "error";
}

function fixed(value: number, decimals: number): string {
  return value.toLocaleString("en-US", {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  });
}

/** A number in one of the formats of the answers. */
export function formattedNumber(value: number, numberFormat: string): string {
  if (numberFormat === DATE_FORMAT) {
    const date = dateFromSerial(value);
    return date === undefined ? String(value) : shortDate(date);
  }
  if (numberFormat === MONEY_FORMAT) return fixed(value, 2);
  if (numberFormat === WHOLE_DOLLAR_FORMAT) return fixed(value, 0);
  if (numberFormat === PERCENT_FORMAT) return `${fixed(value * 100, 2)}%`;
  return String(value);
}

/** A cell of an answer as the page shows it. */
export function shownCell(cell: unknown): ShownCell {
  if (typeof cell === "number") return { text: String(cell), kind: "number" };
  if (typeof cell === "boolean") return { text: String(cell).toUpperCase(), kind: "text" };
  if (typeof cell === "string") return { text: cell, kind: "text" };
  if (typeof cell !== "object" || cell === null) return { text: "", kind: "text" };
  const { basicValue, numberFormat, code, message } = cell as Readonly<Record<string, unknown>>;
  if (typeof basicValue === "number" && typeof numberFormat === "string")
    return { text: formattedNumber(basicValue, numberFormat), kind: "number" };
  const sentence = typeof message === "string" ? `: ${message}` : "";
  return { text: `${String(code)}${sentence}`, kind: "error" };
}

/**
 * The answer to a formula, calculated on this page by the functions themselves, with the number formats.
 *
 * @param formula - One call of a worksheet function with plain values.
 * @returns Rows of cells as a host gets them; one cell with the error if the function returns one.
 * @throws SyntaxError for any other formula; any exception of a function that is not an error of a sheet.
 */
export function answerCells(formula: string): readonly (readonly unknown[])[] {
  const { id, values } = formulaCall(formula);
  const definition = catalog[id];
  if (!definition) throw new SyntaxError(`${id} is not a worksheet function`);
  const cells = values.map((value) =>
    value === undefined ? null : Array.isArray(value) ? (value as unknown) : [[value]]
  );
  try {
    const answer = withFormattedNumbers("double", () => definition.answer(cells));
    return Array.isArray(answer) ? answer : [[answer]];
  } catch (thrown) {
    if (isHostError(thrown)) return [[thrown]];
    throw thrown;
  }
}

/** The answer to a formula as {@link answerCells} gives it, as the page shows it. */
export function liveAnswer(formula: string): readonly (readonly ShownCell[])[] {
  return answerCells(formula).map((row) => row.map(shownCell));
}
