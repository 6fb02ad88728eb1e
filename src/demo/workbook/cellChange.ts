import { type CellValue, isErrorCell } from "../../host/cellValues";
import type { CellPart } from "./sheetPart";
import { decodedText, plainText, storedText } from "./xmlText";

/** What a cell of a file is to contain. What is undefined stays as it is. */
export interface CellChange {
  /** The value; null for none. */
  readonly value?: CellValue;
  /** The formula, only where its text or the cells that it fills change; null for none. */
  readonly formula?: string | null;
  /** The cells that a dynamic array fills. */
  readonly dynamicRange?: string;
  /** A number format, for a cell without one. */
  readonly format?: string;
  /** Whether the number format also replaces another. */
  readonly replacesFormat?: boolean;
}

/** Errors that a file stores as they are; Excel stores newer ones differently. */
const ERRORS_IN_FILES = ["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A"];

/** A value as a file stores it; a formula that returns a blank cell shows 0. */
export function fileValue(content: CellValue): number | string | boolean | { error: "#VALUE!" } {
  if (content === null) return 0;
  if (!isErrorCell(content)) return content;
  const error = ERRORS_IN_FILES.includes(content.error) ? content.error : "#VALUE!";
  return { error: error as "#VALUE!" };
}

/** The type of a value as a cell of a file names it, and its text. */
export function typeAndText(
  value: Exclude<CellValue, null>
): [type: string | undefined, text: string] {
  if (typeof value === "number") return [undefined, String(value)];
  if (typeof value === "boolean") return ["b", value ? "1" : "0"];
  return typeof value === "string" ? ["str", storedText(value)] : ["e", value.error];
}

/** Whether a cell of a file has a value. */
export function holds(cell: CellPart, value: CellValue): boolean {
  if (value === null) return cell.value === undefined && cell.inlineText === undefined;
  if (cell.value === undefined) return false;
  const held = plainText(cell.value.inside);
  if (typeof value === "number")
    return cell.type === "n" && held.trim() !== "" && Number(held) === value;
  if (typeof value === "string") return cell.type === "str" && decodedText(held) === value;
  const [type, text] = typeAndText(value);
  return cell.type === type && held.trim() === text;
}
