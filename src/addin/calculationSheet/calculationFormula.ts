import { catalog } from "../../functions/catalog";
import { formulaPieces } from "../../host/formulaPieces";

/** The table function that shows the calculation of each function, and the positions of the arguments that it takes if not all. */
const LINES: Readonly<Record<string, readonly [lines: string, positions?: readonly number[]]>> = {
  CHARGES: ["CHARGELINES"],
  EFFECTIVERATE: ["CHARGELINES"],
  LIABILITY: ["LIABILITYLINES"],
  ESTPENALTY: ["ESTPENALTYLINES"],
  METHOD: ["METHODLINES"],
  ISSUECOUNT: ["ISSUES"],
  DUE: ["CALENDAR", [0, 1, 2, 3, 4]],
  EXTENDED: ["CALENDAR", [0, 1, 2, 3, 4]],
  PAYBY: ["CALENDAR", [0, 1, 2, 3, 4]],
  STATEDUE: ["STATERULE", [0, 1, -1, -1, -1, 2]],
  STATEEXTENDED: ["STATERULE"],
};
/** The function whose calculation a table function shows. */
const SINGLE: Readonly<Record<string, string>> = {
  CHARGELINES: "CHARGES",
  LIABILITYLINES: "LIABILITY",
  ESTPENALTYLINES: "ESTPENALTY",
  METHODLINES: "METHOD",
  ISSUES: "ISSUECOUNT",
};
/** Functions whose calculation is their arguments and a few steps. */
const IN_STEPS: readonly string[] = ["SHORTFALL", "SUGGEST", "PROJECTEDTAX"];

/** The functions with a calculation, in the order in which a sentence names them. */
export const CALCULATED: readonly string[] = [...Object.keys(LINES), "WHATIF", ...IN_STEPS];

/** A call of one function for one client, whose references name their sheets. */
export interface Calculation {
  readonly name: string;
  readonly given: readonly string[];
  /** The formula of the table that shows the calculation; `undefined` if it is not one table. */
  readonly lines: string | undefined;
}

const CALL = /EXT\.([A-Z]+)\(/;
const CELL = String.raw`\$?[A-Z]{1,3}\$?\d{1,7}`;
const REFERENCE = new RegExp(
  String.raw`("(?:[^"]|"")*")|((?:'[^']+'|[\w.]+)!)?(${CELL})(?::(${CELL}))?(?![\w(.!])`,
  "g"
);

/** The arguments of a call, from the text behind its opening parenthesis, and where they end. */
export function argumentsOf(inside: string): {
  readonly parts: readonly string[];
  readonly end: number;
} {
  const parts: string[] = [];
  let depth = 0;
  let start = 0;
  let at = 0;
  for (const { kind, text } of formulaPieces(inside)) {
    const mark = kind === "punctuation" ? text : "";
    if (depth === 0 && (mark === "," || mark === ")")) {
      parts.push(inside.slice(start, at));
      if (mark === ")") return { parts, end: at };
      start = at + 1;
    } else if (mark === "(" || mark === "{") depth += 1;
    else if (mark === ")" || mark === "}") depth -= 1;
    at += text.length;
  }
  return { parts: [...parts, inside.slice(start)], end: at };
}

/** The cell of a column that belongs to a row of the answer; any other range stays as it is. */
function cellOfColumn(from: string, to: string, rowsBelow: number): string {
  const [, column = "", first = ""] = /^\$?([A-Z]+)\$?(\d+)$/.exec(from) ?? [];
  const [, lastColumn = "", last = ""] = /^\$?([A-Z]+)\$?(\d+)$/.exec(to) ?? [];
  const isColumn = column === lastColumn && Number(last) > Number(first);
  return isColumn ? `${column}${String(Number(first) + rowsBelow)}` : `${from}:${to}`;
}

function fromSheet(argument: string, sheet: string, rowsBelow: number | undefined): string {
  const quoted = `'${sheet.replaceAll("'", "''")}'!`;
  return argument.replace(
    REFERENCE,
    (whole: string, text?: string, prefix?: string, from?: string, to?: string) => {
      if (text !== undefined || from === undefined) return whole;
      const place = prefix ?? quoted;
      if (to === undefined) return place + from;
      return (
        place + (rowsBelow === undefined ? `${from}:${to}` : cellOfColumn(from, to, rowsBelow))
      );
    }
  );
}

/** The name of the function that a formula calls first; `undefined` if it calls none of the add-in. */
export function calledName(formula: string): string | undefined {
  return CALL.exec(formula)?.[1];
}

/** A call of a function with arguments; blank ones at the end are left out. */
export function callOf(name: string, given: readonly string[]): string {
  const written = given.slice(0, Object.keys(catalog[name]?.arguments ?? {}).length);
  while (written.at(-1) === "") written.pop();
  return `EXT.${name}(${written.join(",")})`;
}

/** One cell of the table that WHATIF fills, as a call of CHARGES. */
function oneOfWhatIf(given: readonly string[], row: number, column: number): string[] | undefined {
  if (row < 1 || column < 1) return undefined;
  const [taxYear = "", totalTax = "", paid = "", extra = "", dates = "", ...lateness] = given;
  const cellOf = (range: string, index: number): string =>
    /[:{]/.test(range) ? `INDEX(${range},${String(index)})` : range;
  const date = cellOf(dates, column);
  return [taxYear, totalTax, `${paid}+${cellOf(extra, row)}`, date, date, ...lateness];
}

/**
 * The calculation of a cell: the function with its arguments for the client of the row, and the table function with the same.
 *
 * @param formula - The formula of the cell, or of the cell that fills it.
 * @param sheet - The sheet of the cell.
 * @param rowsBelow - Rows from the cell with the formula down to the selected one.
 * @param columnsRight - Columns from the cell with the formula to the right to the selected one.
 * @returns The calculation, or `undefined` if there is none.
 */
export function calculationOf(
  formula: string,
  sheet: string,
  rowsBelow: number,
  columnsRight = 0
): Calculation | undefined {
  const call = CALL.exec(formula);
  const called = call?.[1];
  if (!call || called === undefined) return undefined;
  const { parts } = argumentsOf(formula.slice(call.index + call[0].length));
  // A function of one client takes a range of items or payments as a whole.
  const isOneClient = catalog[called]?.form !== "row";
  const given = parts.map((part) =>
    fromSheet(part.trim(), sheet, isOneClient ? undefined : rowsBelow)
  );
  if (called === "WHATIF") {
    const cost = oneOfWhatIf(given, rowsBelow, columnsRight);
    return cost && { name: "CHARGES", given: cost, lines: `=${callOf("CHARGELINES", cost)}` };
  }
  const name = SINGLE[called] ?? called;
  if (called in SINGLE) return { name, given, lines: `=${callOf(called, given)}` };
  if (IN_STEPS.includes(name)) return { name, given, lines: undefined };
  const [lines, positions] = LINES[name] ?? [];
  if (lines === undefined) return undefined;
  const taken = positions ? positions.map((index) => given[index] ?? "") : given;
  return { name, given, lines: `=${callOf(lines, taken)}` };
}
