/** The functions whose working another function with the same arguments lays out. */
const LINES: Readonly<Record<string, string>> = {
  CHARGES: "CHARGELINES",
  EFFECTIVERATE: "CHARGELINES",
  LIABILITY: "LIABILITYLINES",
  ESTIMATECHARGE: "ESTPENALTYLINES",
  ROUTE: "METHODLINES",
  CHECKCOUNT: "ISSUES",
};
/** Last arguments that the working does not take, from which on they are left off. */
const MOST_ARGUMENTS: Readonly<Record<string, number>> = { CHECKCOUNT: 18 };
/** Functions whose dates are laid out by the season's calendar, and which of their arguments it takes. */
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

/** Splits the inside of a call at the commas that part its arguments. */
function argumentsOf(inside: string): { readonly parts: readonly string[]; readonly end: number } {
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

/** The row of a column that a cell filled by its formula stands for. */
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
 * The formula that lays out the working of a cell's formula: the lines form of the same function, its references pointing back at
 * the sheet they came from.
 *
 * @param formula - The cell's formula, or that of the cell that fills it.
 * @param sheet - The sheet it stands on.
 * @param rowsBelow - Rows from the formula's cell down to the one asked about.
 * @returns The formula, or `undefined` where no function lays out the working of this one.
 */
export function workingFormula(
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
  // A block of items or payments belongs to one client as a whole.
  const isOneClient = ["LIABILITYLINES", "ESTPENALTYLINES"].includes(lines);
  const given = taken
    .slice(0, MOST_ARGUMENTS[name] ?? taken.length)
    .map((part) => fromSheet(part.trim(), sheet, isOneClient ? undefined : rowsBelow));
  while (given.at(-1) === "") given.pop();
  return `=EXT.${lines}(${given.join(",")})`;
}
