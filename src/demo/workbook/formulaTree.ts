import { parse, tokenize } from "@cj-tech-master/excelts/formula";
import { columnNumber } from "../../host/cellAddress";

/** A reference to a cell in a parsed formula. */
export interface CellNode {
  readonly type: 5;
  readonly col: string;
  readonly row: string;
  readonly sheet?: string;
  readonly endSheet?: string;
}

/** A formula as the library has parsed it, with the numbers it uses for the kinds of node. */
export type FormulaNode =
  | { readonly type: 1 | 2 | 3 | 4 | 16 }
  | CellNode
  | {
      readonly type: 6;
      readonly start: CellNode;
      readonly end: CellNode;
      readonly sheet?: string;
      readonly endSheet?: string;
    }
  | {
      readonly type: 7;
      readonly op: string;
      readonly left: FormulaNode;
      readonly right: FormulaNode;
    }
  | { readonly type: 8 | 11; readonly operand: FormulaNode }
  | {
      readonly type: 9;
      readonly name: string;
      readonly args: readonly FormulaNode[];
    }
  | { readonly type: 10; readonly rows: readonly (readonly FormulaNode[])[] }
  | { readonly type: 12; readonly name: string }
  | {
      readonly type: 13;
      readonly startCol: string;
      readonly endCol: string;
      readonly sheet?: string;
      readonly endSheet?: string;
    }
  | {
      readonly type: 14;
      readonly startRow: number;
      readonly endRow: number;
      readonly sheet?: string;
      readonly endSheet?: string;
    }
  | {
      readonly type: 15;
      readonly tableName: string;
      readonly columns: readonly string[];
      readonly specials: readonly string[];
    }
  | { readonly type: 17; readonly areas: readonly FormulaNode[] };

/** Parses a formula with the parser of the calculating library; undefined when that fails. */
export function parseFormula(text: string): FormulaNode | undefined {
  try {
    return parse(tokenize(text)) as unknown as FormulaNode;
  } catch {
    return undefined;
  }
}

/** The nodes directly below a node. */
export function childNodes(node: FormulaNode): readonly FormulaNode[] {
  switch (node.type) {
    case 7:
      return [node.left, node.right];
    case 8:
    case 11:
      return [node.operand];
    case 9:
      return node.args;
    case 10:
      return node.rows.flat();
    case 17:
      return node.areas;
    default:
      return [];
  }
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
  return name
    .toUpperCase()
    .replace(/^_XLFN\./, "")
    .replace(/^_XLWS\./, "");
}
