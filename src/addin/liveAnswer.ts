import { dateFromSerial } from "../calendar/dateSerial";
import { isHostError } from "../functions/errors";
import { formulaCall } from "./formulaCall";
import { worksheetFunctions } from "./worksheetFunctions";

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

/** A number in one of the formats that the answers bear. */
export function formattedNumber(value: number, numberFormat: string): string {
  if (numberFormat.startsWith("yyyy-mm-dd")) {
    return (
      (dateFromSerial(value) ?? "") + numberFormat.slice("yyyy-mm-dd".length).replaceAll('"', "")
    );
  }
  if (numberFormat === "#,##0.00") return fixed(value, 2);
  if (numberFormat === "#,##0") return fixed(value, 0);
  if (numberFormat === "0.00%") return `${fixed(value * 100, 2)}%`;
  return String(value);
}

/** A cell of an answer as the page shows it. */
export function shownCell(cell: unknown): ShownCell {
  if (typeof cell === "number") return { text: String(cell), kind: "number" };
  if (typeof cell === "boolean") return { text: String(cell).toUpperCase(), kind: "text" };
  if (typeof cell !== "object" || cell === null) return { text: String(cell ?? ""), kind: "text" };
  const { basicValue, numberFormat, code, message } = cell as Readonly<Record<string, unknown>>;
  if (typeof basicValue === "number" && typeof numberFormat === "string")
    return { text: formattedNumber(basicValue, numberFormat), kind: "number" };
  const sentence = typeof message === "string" ? `: ${message}` : "";
  return { text: `${String(code)}${sentence}`, kind: "error" };
}

/**
 * What a formula answers, worked out on this page by the functions themselves.
 *
 * @param formula - One call of ours with plain values.
 * @returns Rows of cells; one cell with the error where it is refused.
 * @throws SyntaxError for a formula that is no such call; whatever a function throws that is no error of a sheet.
 */
export function liveAnswer(formula: string): readonly (readonly ShownCell[])[] {
  const { id, values } = formulaCall(formula);
  const answer = worksheetFunctions.get(id);
  if (!answer) throw new SyntaxError(`${id} is no worksheet function`);
  const cells = values.map((value) =>
    value === undefined ? null : Array.isArray(value) ? (value as unknown) : [[value]]
  );
  try {
    const rows = answer(...cells);
    return (Array.isArray(rows) ? (rows as unknown[][]) : [[rows]]).map((row) =>
      row.map(shownCell)
    );
  } catch (thrown) {
    if (isHostError(thrown)) return [[shownCell(thrown)]];
    throw thrown;
  }
}
