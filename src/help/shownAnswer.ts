import { formatCellValue } from "@cj-tech-master/excelts";
import type { AnswerCell } from "../host/cellValues";

/** A cell as the sheet shows it. */
export interface ShownCell {
  readonly text: string;
  /** Whether the sheet aligns it to the right, as it does numbers and dates. */
  readonly isNumber: boolean;
}

/** A cell as the sheet shows it, by its number format if it has one. */
export function shownCell({ value, numberFormat, error }: AnswerCell): ShownCell {
  if (error !== undefined) return { text: error, isNumber: false };
  if (typeof value === "boolean") return { text: String(value).toUpperCase(), isNumber: false };
  if (typeof value !== "number") return { text: value ?? "", isNumber: false };
  return { text: formatCellValue(value, numberFormat ?? "General"), isNumber: true };
}
