import type { FormulaPiece } from "./formulaPieces";
import { childNodes, type FormulaNode, plainFunctionName } from "./formulaTree";

/** Functions that count text only where it is an argument itself, not where a cell contains it. */
const IGNORES_TEXT_IN_CELLS = new Set(
  `AND AVERAGE COUNT GEOMEAN HARMEAN MAX MEDIAN MIN OR PRODUCT STDEV STDEV.P STDEV.S STDEVP SUM
  SUMSQ VAR VAR.P VAR.S VARP XOR`.split(/\s+/)
);
/** What may be in a format beside the letters of a date without quotation marks. */
const PLAIN_IN_DATES = /^[ ,./()-]$/;
const CELL = /^\$?[A-Z]{1,3}\$?\d+$/i;

function callOf(pieces: readonly FormulaPiece[], index: number): { name: string; end: number } {
  let depth = 0;
  let end = index + 1;
  for (; end < pieces.length; end += 1) {
    const { text } = pieces[end] ?? { text: "" };
    if (text === "(" || text === "{") depth += 1;
    if (text === ")" || text === "}") depth -= 1;
    if (depth === 0) break;
  }
  return { name: plainFunctionName(pieces[index]?.text ?? ""), end };
}

/** The first and the last piece of each argument of a call, without spaces around it. */
function argumentsOf(pieces: readonly FormulaPiece[], start: number, end: number): number[][] {
  const found: number[][] = [[]];
  let depth = 0;
  for (let index = start + 2; index < end; index += 1) {
    const { text, kind } = pieces[index] ?? { text: "", kind: "space" };
    if (text === "(" || text === "{") depth += 1;
    if (text === ")" || text === "}") depth -= 1;
    if (text === "," && depth === 0) found.push([]);
    else if (kind !== "space") found.at(-1)?.push(index);
  }
  return found;
}

/** A format of TEXT without the escapes that the library shows literally. */
function correctedFormat(quoted: string): string {
  const format = quoted.slice(1, -1).replaceAll('""', '"');
  const isDate = /[dmyhs]/i.test(format.replace(/"[^"]*"|\\.|_./g, ""));
  const literal = (text: string): string =>
    isDate && Array.from(text).every((character) => PLAIN_IN_DATES.test(character))
      ? text
      : `"${text}"`;
  const corrected = format.replace(
    /"([^"]*)"|\\(.)|_./g,
    (_all, words: string | undefined, character: string | undefined) =>
      literal(words ?? character ?? " ")
  );
  return `"${corrected.replaceAll('"', '""')}"`;
}

/**
 * The pieces of a formula, written so that the calculating library returns what Excel does: a single cell in SUM and the like becomes a
 * block, in which text is ignored; the format of TEXT loses escapes; XLOOKUP and XMATCH search from the start instead of by halves.
 */
export function correctedPieces(given: readonly FormulaPiece[]): FormulaPiece[] {
  const pieces = [...given];
  for (const [index, piece] of given.entries()) {
    if (piece.kind !== "call") continue;
    const { name, end } = callOf(given, index);
    const correctsText = name === "TEXT" || name === "XLOOKUP" || name === "XMATCH";
    if (!correctsText && !IGNORES_TEXT_IN_CELLS.has(name)) continue;
    for (const [position, places] of argumentsOf(given, index, end).entries()) {
      const last = places.at(-1) ?? -1;
      const { text = "", kind = "space" } = given[last] ?? {};
      const isLookup = name !== "TEXT" && position === (name === "XMATCH" ? 3 : 5);
      if (name === "TEXT" && position === 1 && places.length === 1 && kind === "quoted")
        pieces[last] = { kind, text: correctedFormat(text) };
      else if (correctsText && isLookup && text === "2") pieces[last] = { kind, text: "1" };
      else if (!correctsText && CELL.test(text) && isOneCell(places.map((at) => given[at])))
        pieces[last] = { kind, text: `${text}:${text}` };
    }
  }
  return pieces;
}

/** A formula of a table in which each column without the name of its table gets it; the library finds it only beside the data. */
export function withTableNames(pieces: readonly FormulaPiece[], table: string | undefined): string {
  return pieces
    .map(({ kind, text }, index) => {
      const isColumn = kind === "bracket" && !/^\[\d+\]$/.test(text);
      const isNamed = pieces[index - 1]?.kind === "word" || pieces[index + 1]?.kind === "word";
      return isColumn && !isNamed ? `${table ?? ""}${text}` : text;
    })
    .join("");
}

function isOneCell(pieces: readonly (FormulaPiece | undefined)[]): boolean {
  if (pieces.length === 1) return true;
  const [sheet, mark] = pieces;
  const isSheet = sheet?.kind === "word" || sheet?.kind === "quoted";
  return pieces.length === 3 && isSheet && mark?.text === "!";
}

/** Functions whose results differ from Excel's in cases that the formula does not show. Measured. */
const MAY_DIFFER: Readonly<Record<string, string>> = {
  AGGREGATE: "AGGREGATE may count results of other such functions",
  DCOUNT: "DCOUNT may read its conditions otherwise",
  DEVSQ: "DEVSQ may count text otherwise",
  "ERF.PRECISE": "ERF.PRECISE has seven correct digits",
  "F.DIST": "F.DIST has seven correct digits",
  FREQUENCY: "FREQUENCY may fill other cells",
  HLOOKUP: "HLOOKUP may find another column where the first row is not sorted",
  "LOGNORM.DIST": "LOGNORM.DIST has seven correct digits",
  LOOKUP: "LOOKUP may find another cell where the cells are not sorted",
  MODE: "MODE may return another of several values",
  "NORM.DIST": "NORM.DIST has seven correct digits",
  "NORM.S.DIST": "NORM.S.DIST has seven correct digits",
  SUMX2PY2: "SUMX2PY2 may count text otherwise",
};

const COMPARISONS = new Set(["=", "<>", "<", ">", "<=", ">="]);
const ARITHMETIC = new Set(["+", "-", "*", "/", "^"]);

function isArithmetic(node: FormulaNode): boolean {
  return node.type === 7 && ARITHMETIC.has(node.op);
}

/** Why the result of a formula may differ from Excel's; undefined if nothing is known that makes it differ. */
export function reasonToDiffer(node: FormulaNode): string | undefined {
  if (node.type === 7 && COMPARISONS.has(node.op)) {
    if (isArithmetic(node.left) || isArithmetic(node.right))
      return "it compares a calculated number, of which Excel compares fifteen digits";
  }
  if (node.type === 9) {
    const name = plainFunctionName(node.name);
    if (name === "SUBTOTAL" && node.args.length > 2)
      return "SUBTOTAL may count results of other subtotals";
    if (name === "TEXT" && node.args[1]?.type !== 2 && node.args[1]?.type !== undefined)
      return "TEXT receives a format from a cell, which may have marks that are shown otherwise";
    const known = Object.hasOwn(MAY_DIFFER, name) ? MAY_DIFFER[name] : undefined;
    if (known !== undefined) return known;
  }
  for (const child of childNodes(node)) {
    const found = reasonToDiffer(child);
    if (found !== undefined) return found;
  }
  return undefined;
}
