/** The table function that shows the calculation of each function. It takes the same arguments. */
const LINES: Readonly<Record<string, string>> = {
  CHARGES: "CHARGELINES",
  EFFECTIVERATE: "CHARGELINES",
  LIABILITY: "LIABILITYLINES",
  ESTPENALTY: "ESTPENALTYLINES",
  METHOD: "METHODLINES",
  ISSUECOUNT: "ISSUES",
};
/** How many arguments the table function takes, where the function has more. */
const MOST_ARGUMENTS: Readonly<Record<string, number>> = { ISSUECOUNT: 18 };
/** Functions whose dates CALENDAR shows, and the positions of the arguments that it takes. */
const DATES: Readonly<Record<string, readonly number[]>> = {
  DUE: [0, 1, 2, 3, 4],
  EXTENDED: [0, 1, 2, 3, 4],
  PAYBY: [0, 1, 2, 3, 4],
};

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
  let quoted = false;
  for (let at = 0; at < inside.length; at++) {
    const character = inside[at];
    if (character === '"') quoted = !quoted;
    if (quoted) continue;
    if (character === "(" || character === "{") depth++;
    else if (character === "}") depth--;
    else if (character === ")" && depth > 0) depth--;
    else if (character === ")") return { parts: [...parts, inside.slice(start, at)], end: at };
    else if (character === "," && depth === 0) {
      parts.push(inside.slice(start, at));
      start = at + 1;
    }
  }
  return { parts: [...parts, inside.slice(start)], end: inside.length };
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
    (whole, text?: string, prefix?: string, from?: string, to?: string) => {
      if (text !== undefined || from === undefined) return whole;
      const place = prefix ?? quoted;
      if (to === undefined) return place + from;
      return (
        place + (rowsBelow === undefined ? `${from}:${to}` : cellOfColumn(from, to, rowsBelow))
      );
    }
  );
}

/**
 * The formula that shows the calculation of a cell: the table function with the same arguments. Its references name the sheet of the
 * cell.
 *
 * @param formula - The formula of the cell, or of the cell that fills it.
 * @param sheet - The sheet of the cell.
 * @param rowsBelow - Rows from the cell with the formula down to the selected one.
 * @returns The formula, or `undefined` if no function shows this calculation.
 */
export function calculationFormula(
  formula: string,
  sheet: string,
  rowsBelow: number
): string | undefined {
  const call = CALL.exec(formula);
  const name = call?.[1];
  if (!call || name === undefined) return undefined;
  const isLines = Object.values(LINES).includes(name);
  const dates = DATES[name];
  const lines = isLines ? name : dates ? "CALENDAR" : LINES[name];
  if (lines === undefined) return undefined;
  const { parts } = argumentsOf(formula.slice(call.index + call[0].length));
  const taken = dates ? dates.map((index) => parts[index] ?? "") : parts;
  // A range of items or payments belongs to one client as a whole.
  const isOneClient = ["LIABILITYLINES", "ESTPENALTYLINES"].includes(lines);
  const given = taken
    .slice(0, MOST_ARGUMENTS[name] ?? taken.length)
    .map((part) => fromSheet(part.trim(), sheet, isOneClient ? undefined : rowsBelow));
  while (given.at(-1) === "") given.pop();
  return `=EXT.${lines}(${given.join(",")})`;
}
