/** A call in a formula: `=EXT.DUE(2023,,"out of country")`. */
export interface FormulaCall {
  readonly id: string;
  /** `undefined` for an argument skipped between two commas. */
  readonly values: readonly unknown[];
}

const CALL = /^=EXT\.([A-Z]+)\((.*)\)$/;
const ARGUMENT = /("(?:[^"]|"")*"|\{[^}]*\}|[^",{]*)(,|$)/y;
const CELLS = /("(?:[^"]|"")*"|[^",;]*)([,;]|$)/g;

/** An array constant: commas between cells of a row, semicolons between rows. */
function arrayOf(inside: string): unknown[][] {
  const rows: unknown[][] = [[]];
  for (const [, cell = "", ends] of inside.matchAll(CELLS)) {
    rows.at(-1)?.push(valueOf(cell));
    if (ends === ";") rows.push([]);
    if (ends === "") break;
  }
  return rows;
}

function valueOf(written: string): unknown {
  const text = written.trim();
  if (text === "") return undefined;
  if (text.startsWith("{")) return arrayOf(text.slice(1, -1));
  if (text === "TRUE" || text === "FALSE") return text === "TRUE";
  if (/^".*"$/s.test(text)) return text.slice(1, -1).replaceAll('""', '"');
  const number = /^(-?\d+(?:\.\d+)?)(%?)$/.exec(text);
  if (!number) throw new SyntaxError(`${text} is not a number and not text in quotes`);
  return Number(number[1]) / (number[2] === "%" ? 100 : 1);
}

/**
 * Reads a formula that is one call of a worksheet function with plain values: numbers, percents, text in quotes, TRUE and FALSE,
 * array constants.
 *
 * @throws SyntaxError for any other formula.
 */
export function formulaCall(formula: string): FormulaCall {
  const [, id, inside] = CALL.exec(formula) ?? [];
  if (id === undefined || inside === undefined)
    throw new SyntaxError(`${formula} is not a call of a worksheet function`);
  const values: unknown[] = [];
  ARGUMENT.lastIndex = 0;
  for (let more = inside !== ""; more;) {
    const found = ARGUMENT.exec(inside);
    if (!found) throw new SyntaxError(`${formula} cannot be read`);
    values.push(valueOf(found[1] ?? ""));
    more = found[2] === ",";
  }
  return { id, values };
}
