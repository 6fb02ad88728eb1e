import { formatCellValue } from "@cj-tech-master/excelts";
import type { AnswerCell } from "../host/cellValues";

/** A cell as the sheet shows it. */
export interface ShownCell {
  readonly text: string;
  /** Whether the sheet sets it to the right, as it does numbers and dates. */
  readonly isNumber: boolean;
}

/** A cell as the sheet shows it: by its number format where it has one. */
export function shownCell({ value, numberFormat, error }: AnswerCell): ShownCell {
  if (error !== undefined) return { text: error, isNumber: false };
  if (typeof value === "boolean") return { text: String(value).toUpperCase(), isNumber: false };
  if (typeof value !== "number") return { text: value ?? "", isNumber: false };
  return { text: formatCellValue(value, numberFormat ?? "General"), isNumber: true };
}

/**
 * What the words after an example's formula add to the one cell that is shown beside it.
 *
 * @param words - Such as "is 10.00: two months begun".
 * @returns Such as "two months begun"; empty where they only repeat the answer.
 */
export function remarkOf(words: string): string {
  if (words.startsWith("begins: ")) return "";
  return /^is .*?: (.+)$/.exec(words)?.[1] ?? (words.startsWith("is ") ? "" : words);
}
