import { ErrorCell } from "./hostError";

/** Error codes, such as `#DIV/0!`, `#N/A`, `#GETTING_DATA`. */
const ERROR_CODE = /^#[A-Z0-9/_]{1,20}[!?]?$/;

/** How an object without a value is quoted in a message. */
const NO_VALUE = "[object]";

/** The value of a cell, without errors and without number formats. */
export type CellValue = string | number | boolean | null;

/**
 * The plain value of a cell.
 *
 * A formatted number counts as its basic value. An error cell is thrown so that it passes through to the answer. The host's
 * shape of an error is documented only in part, so any object with an error code counts as one.
 *
 * @param cell - What the host passed.
 * @returns Text, a number, TRUE or FALSE, or `null` for a blank cell.
 * @throws ErrorCell when the cell contains an error.
 */
export function cellValue(cell: unknown): CellValue {
  if (typeof cell === "string" || typeof cell === "number" || typeof cell === "boolean")
    return cell;
  if (cell === null || cell === undefined) return null;
  if (typeof cell !== "object") return NO_VALUE;
  const { type, basicValue, code, errorType } = cell as Readonly<Record<string, unknown>>;
  const error = [code, basicValue].find(
    (text): text is string => typeof text === "string" && ERROR_CODE.test(text)
  );
  const mayBeError = type === undefined || type === "Error";
  if (errorType !== undefined || type === "Error" || (mayBeError && error !== undefined)) {
    throw new ErrorCell(error ?? "#VALUE!");
  }
  return basicValue === undefined || typeof basicValue === "object"
    ? NO_VALUE
    : cellValue(basicValue);
}

/** Whether a cell is blank or contains only spaces. A zero counts as a value; see `isBlankOrZero`. */
export function isBlank(value: CellValue): value is null | "" {
  return value === null || (typeof value === "string" && value.trim() === "");
}

/** Whether a cell is blank where 0 is not a possible value: some builds of Excel send 0 for a blank cell. */
export function isBlankOrZero(value: CellValue): boolean {
  return value === 0 || isBlank(value);
}

/** Whether a cell of a column is blank. */
export function isEmptyCell(cell: unknown): boolean {
  return cell === null || cell === undefined || (typeof cell === "string" && isBlank(cell));
}

const LONGEST_SHOWN = 40;
/** Control characters, direction marks and unpaired surrogates, which would hide or reverse the words around them. */
const UNSHOWN = /[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/gu;

/** A value as a message quotes it: its first 40 characters, without invisible ones. */
export function shown(value: CellValue): string {
  if (value === null) return "nothing";
  if (typeof value !== "string")
    return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
  const text = value.length > LONGEST_SHOWN ? `${value.slice(0, LONGEST_SHOWN)}…` : value;
  return `"${text.replace(UNSHOWN, "?")}"`;
}
