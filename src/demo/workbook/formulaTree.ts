import { parse, tokenize } from "@cj-tech-master/excelts/formula";
import { columnNumber } from "../../host/cellAddress";

type PlainNumber<Kind extends number> = `${Kind}` extends `${infer Plain extends number}`
  ? Plain
  : never;
/** The library names the kinds of node by an enumeration that it does not export; here they are its numbers. */
type Numbered<Value> = Value extends (infer Item)[]
  ? Numbered<Item>[]
  : Value extends { type: infer Kind extends number }
    ? { [Key in keyof Value]: Key extends "type" ? PlainNumber<Kind> : Numbered<Value[Key]> }
    : Value;

/** A formula as the library has parsed it. */
export type FormulaNode = Numbered<ReturnType<typeof parse>>;
/** A reference to a cell in a parsed formula. */
export type CellNode = Extract<FormulaNode, { colAbsolute: boolean }>;
/** A reference to a block of cells in a parsed formula. */
export type BlockNode = Extract<FormulaNode, { start: CellNode }>;
/** A reference to a table in a parsed formula. */
export type TableNode = Extract<FormulaNode, { tableName: string }>;

/** Parses a formula with the parser of the calculating library; undefined when that fails. */
export function parseFormula(text: string): FormulaNode | undefined {
  try {
    return parse(tokenize(text));
  } catch {
    return undefined;
  }
}

/** A node with each node directly below it replaced. */
export function withChildren(
  node: FormulaNode,
  change: (child: FormulaNode, position: number) => FormulaNode
): FormulaNode {
  switch (node.type) {
    case 7:
      return { ...node, left: change(node.left, 0), right: change(node.right, 1) };
    case 8:
    case 11:
      return { ...node, operand: change(node.operand, 0) };
    case 9:
      return { ...node, args: node.args.map(change) };
    case 10:
      return { ...node, rows: node.rows.map((row) => row.map(change)) };
    case 17:
      return { ...node, areas: node.areas.map(change) };
    default:
      return node;
  }
}

/** The nodes directly below a node. */
export function childNodes(node: FormulaNode): FormulaNode[] {
  const children: FormulaNode[] = [];
  withChildren(node, (child) => {
    children.push(child);
    return child;
  });
  return children;
}

/** The first answer that a question has for a node or one below it. */
export function firstOf<Answer>(
  node: FormulaNode,
  ask: (node: FormulaNode) => Answer | undefined
): Answer | undefined {
  const own = ask(node);
  if (own !== undefined) return own;
  for (const child of childNodes(node)) {
    const found = firstOf(child, ask);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** The number of nested levels of a formula, counted without recursion. */
export function depthOf(tree: FormulaNode): number {
  let depth = 0;
  for (let level: readonly FormulaNode[] = [tree]; level.length > 0; depth += 1)
    level = level.flatMap(childNodes);
  return depth;
}

/** The number of cells in the blocks of a formula. Whole rows and columns do not count, because only their cells in use are read. */
export function cellsRead(tree: FormulaNode): number {
  if (tree.type !== 6) return childNodes(tree).reduce((sum, child) => sum + cellsRead(child), 0);
  const { start, end } = tree;
  const height = Math.abs(Number(end.row) - Number(start.row)) + 1;
  return height * (Math.abs(columnNumber(end.col) - columnNumber(start.col)) + 1);
}

/** The name of a function without the prefix that files give to newer functions. */
export function plainFunctionName(name: string): string {
  return name.toUpperCase().replace(/^_XLFN\.(_XLWS\.)?/, "");
}

/** The operators in the order in which they bind more tightly; a space is the cells that two blocks have in common. */
const OPERATORS = [
  ["=", "<>", "<", ">", "<=", ">="],
  ["&"],
  ["+", "-"],
  ["*", "/"],
  ["^"],
  [" "],
  [":"],
];
const OF_SIGN = 5;

function strengthOf(node: FormulaNode): number {
  if (node.type !== 7) return OPERATORS.length;
  return OPERATORS.findIndex((equals) => equals.includes(node.op));
}

function sheetText({ sheet, endSheet }: { sheet?: string; endSheet?: string }): string {
  if (sheet === undefined) return "";
  const names = endSheet === undefined ? sheet : `${sheet}:${endSheet}`;
  return `'${names.replaceAll("'", "''")}'!`;
}

/** The text of a formula, which the parser of the library reads as the same formula. */
export function formulaText(node: FormulaNode): string {
  const operand = (child: FormulaNode, least: number): string =>
    strengthOf(child) < least ? `(${formulaText(child)})` : formulaText(child);
  switch (node.type) {
    case 2:
      return `"${node.value.replaceAll('"', '""')}"`;
    case 1:
    case 3:
    case 4:
      return String(node.value).toUpperCase();
    case 5:
      return sheetText(node) + node.col + node.row;
    case 6:
      return `${sheetText(node)}${node.start.col}${node.start.row}:${node.end.col}${node.end.row}`;
    case 7: {
      const strength = strengthOf(node);
      return operand(node.left, strength) + node.op + operand(node.right, strength + 1);
    }
    case 8:
      return node.op + operand(node.operand, OF_SIGN);
    case 9:
      return `${node.name}(${node.args.map(formulaText).join(",")})`;
    case 10:
      return `{${node.rows.map((row) => row.map(formulaText).join(",")).join(";")}}`;
    case 11:
      return node.operand.type === 8
        ? `(${formulaText(node.operand)})%`
        : `${operand(node.operand, OPERATORS.length)}%`;
    case 12:
      return node.name;
    case 13:
      return `${sheetText(node)}${node.startCol}:${node.endCol}`;
    case 14:
      return `${sheetText(node)}${String(node.startRow)}:${String(node.endRow)}`;
    case 15:
      return "#REF!";
    case 16:
      return "";
    case 17:
      return `(${node.areas.map(formulaText).join(",")})`;
    default:
      return "";
  }
}
