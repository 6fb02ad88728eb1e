import { ErrorCell } from "./errors";

/** The codes of errors, such as `#DIV/0!`, `#N/A`, `#GETTING_DATA`. */
const ERROR_CODE = /^#[A-Z0-9/_]{1,20}[!?]?$/;

/** What a cell may hand to a function once errors and formatted numbers are dealt with. */
export type CellValue = string | number | boolean | null;

/**
 * The plain value of a cell.
 *
 * A formatted number counts as its basic value; an error cell is thrown so that it passes through. What the host sends for an
 * error is documented only in part, so any object that names an error code counts as one.
 *
 * @param cell - What the host passed.
 * @returns Text, number, yes/no, or `null` for nothing.
 * @throws ErrorCell when the cell holds an error.
 */
export function cellValue(cell: unknown): CellValue {
  if (typeof cell === "string" || typeof cell === "number" || typeof cell === "boolean")
    return cell;
  if (cell === null || cell === undefined) return null;
  if (typeof cell !== "object") return String(cell);
  const { type, basicValue, code, errorType } = cell as Readonly<Record<string, unknown>>;
  const error = [code, basicValue].find(
    (text) => typeof text === "string" && ERROR_CODE.test(text)
  );
  const mayBeError = type === undefined || type === "Error";
  if (errorType !== undefined || type === "Error" || (mayBeError && error !== undefined)) {
    throw new ErrorCell(String(error ?? "#VALUE!"));
  }
  return basicValue === undefined || typeof basicValue === "object"
    ? "[object]"
    : cellValue(basicValue);
}

/** Whether a value means "not given": nothing, or empty text. A zero may be meant, see `isBlankOrZero`. */
export function isBlank(value: CellValue): value is null | "" {
  return value === null || (typeof value === "string" && value.trim() === "");
}

/** Whether a value means "not given" where zero cannot be meant: some hosts send 0 for an empty cell. */
export function isBlankOrZero(value: CellValue): boolean {
  return value === 0 || isBlank(value);
}

/** Whether a cell of a column is left empty. */
export function isEmptyCell(cell: unknown): boolean {
  return cell === null || cell === undefined || (typeof cell === "string" && isBlank(cell));
}

const LONGEST_SHOWN = 40;
/** Controls, marks of direction and halves of characters, which would hide or turn the words around them. */
const UNSHOWN = /[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/gu;

/** A value as a message quotes it: its first characters, each of them one that shows. */
export function shown(value: CellValue): string {
  if (value === null) return "nothing";
  if (typeof value !== "string")
    return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
  const text = value.length > LONGEST_SHOWN ? `${value.slice(0, LONGEST_SHOWN)}…` : value;
  return `"${text.replace(UNSHOWN, "?")}"`;
}
