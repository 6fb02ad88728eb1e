import { columnLetters, columnNumber } from "../../host/cellAddress";
import {
  ARITHMETIC,
  COMPARISONS,
  COUNTS_TEXT_IN_CELLS,
  READS_BLOCKS,
  SEARCH_BY_HALVES,
  takesOneValue,
} from "./engineFaults";
import {
  type BlockNode,
  type CellNode,
  type FormulaNode,
  plainFunctionName,
  withChildren,
} from "./formulaTree";
import { FIFTEEN_DIGITS } from "./nativeCorrections";
import { NEARLY_WHOLE } from "./nativeRounding";
import type { OwnFunctionNames } from "./ownFunctionNames";
import type { Area, CellPosition, ReferenceWorld } from "./referenceWorld";
import { LAST_COLUMN, LAST_ROW } from "./sheetStore";
import { tableArea } from "./tableReferences";

/** The mark for an omitted argument of one of our functions. */
export const OMITTED_MARK = "\u0001omitted";
/** What may be in a format beside the letters of a date without quotation marks. */
const PLAIN_IN_DATES = /^[ ,./()-]$/;
/** The kinds of node that are references to cells. */
const REFERENCES = [5, 6, 13, 14, 15];

/** A format of TEXT without the escapes that the library shows literally. */
function correctedFormat(format: string): string {
  const isDate = /[dmyhs]/i.test(format.replace(/"[^"]*"|\\.|_./g, ""));
  const literal = (text: string): string =>
    isDate && Array.from(text).every((character) => PLAIN_IN_DATES.test(character))
      ? text
      : `"${text}"`;
  return format.replace(
    /"([^"]*)"|\\(.)|_./g,
    (_all, quoted: string | undefined, character: string | undefined) =>
      literal(quoted ?? character ?? " ")
  );
}

function cellNode(sheet: string | undefined, row: number, column: number): CellNode {
  const place = { col: columnLetters(column), row: String(row) };
  const node: CellNode = { type: 5, ...place, colAbsolute: true, rowAbsolute: true };
  return sheet === undefined ? node : { ...node, sheet };
}

function blockNode({ sheet, top, left, bottom, right }: Area): BlockNode {
  return { type: 6, sheet, start: cellNode(sheet, top, left), end: cellNode(sheet, bottom, right) };
}

/** A formula as the calculating library receives it: it then returns what Excel does. */
export class EngineFormula {
  constructor(
    readonly site: number,
    readonly place: CellPosition,
    /** Whether Excel calculates with each cell of a block; otherwise it reads the cell in the same row or column. */
    readonly readsBlocks: boolean,
    readonly world: ReferenceWorld & { readonly names: OwnFunctionNames }
  ) {}

  /** The formula for the library. */
  of(tree: FormulaNode): FormulaNode {
    return this.#oneCell(this.#node(tree, this.readsBlocks), this.readsBlocks);
  }

  #node(node: FormulaNode, readsBlocks: boolean): FormulaNode {
    switch (node.type) {
      case 7:
        return this.#operator(node, readsBlocks);
      case 9:
        return this.#call(node, readsBlocks);
      case 12:
        return this.#named(node);
      case 15: {
        const area = tableArea(node, this.place, this.world.tables);
        return area === undefined ? node : blockNode(area);
      }
      case 8:
      case 11:
        return withChildren(node, (child) =>
          this.#oneCell(this.#node(child, readsBlocks), readsBlocks)
        );
      default:
        return withChildren(node, (child) => this.#node(child, readsBlocks));
    }
  }

  #operator(node: Extract<FormulaNode, { left: FormulaNode }>, readsBlocks: boolean): FormulaNode {
    if (node.op === ":" || node.op === " ")
      return withChildren(node, (child) => this.#node(child, readsBlocks));
    const isComparison =
      COMPARISONS.has(node.op) &&
      ![node.left, node.right].some(({ type }) => type === 2 || type === 3);
    return withChildren(node, (child) => {
      const operand = this.#oneCell(this.#node(child, readsBlocks), readsBlocks);
      if (operand.type === 2 && ARITHMETIC.has(node.op))
        return { type: 9, name: "VALUE", args: [operand] };
      if (!isComparison || operand.type === 1) return operand;
      const isSum = operand.type === 7 && (operand.op === "+" || operand.op === "-");
      const args: FormulaNode[] = isSum ? [operand, this.#site()] : [operand];
      return { type: 9, name: FIFTEEN_DIGITS, args };
    });
  }

  /** The number of the formula, by which functions of the bridge know it. */
  #site(): FormulaNode {
    return { type: 1, value: this.site };
  }

  #call(node: Extract<FormulaNode, { args: FormulaNode[] }>, given: boolean): FormulaNode {
    const name = plainFunctionName(node.name);
    const own = this.world.names.find(node.name);
    const readsBlocks = given || own !== undefined || READS_BLOCKS.has(name);
    const args = node.args.map((argument, position) => {
      const readsThisBlock = readsBlocks || (name === "INDEX" && position === 0);
      const child = this.#node(argument, readsThisBlock);
      if (own !== undefined)
        return child.type === 16 ? { type: 2 as const, value: OMITTED_MARK } : child;
      if (name === "TEXT" && position === 1 && child.type === 2)
        return { ...child, value: correctedFormat(child.value) };
      if (SEARCH_BY_HALVES[name] === position && child.type === 1 && child.value === 2)
        return { ...child, value: 1 };
      if (COUNTS_TEXT_IN_CELLS.has(name) && child.type === 5)
        return { ...child, type: 6 as const, start: child, end: child };
      return name === "SINGLE" || takesOneValue(name, position)
        ? this.#oneCell(child, readsBlocks && name !== "SINGLE")
        : child;
    });
    if (own !== undefined)
      return { type: 9, name: this.world.names.typedName(own.name), args: [this.#site(), ...args] };
    if (Object.hasOwn(NEARLY_WHOLE, name)) return { ...node, args: [this.#site(), ...args] };
    const [only] = args;
    return name === "SINGLE" && only !== undefined ? only : { ...node, args };
  }

  /** A name that stands for cells; what it stands for is relative to the first cell of a sheet. */
  #named(node: Extract<FormulaNode, { name: string }>): FormulaNode {
    const trees = this.world.definedName(node.name, this.place.sheet) ?? [];
    if (trees.length === 0 || !trees.every(({ type }) => REFERENCES.includes(type))) return node;
    const areas = trees.map((tree) => this.#node(this.#moved(tree), true));
    return areas.length === 1 ? (areas[0] ?? node) : { type: 17, areas };
  }

  #moved(node: FormulaNode): FormulaNode {
    if (node.type === 6)
      return { ...node, start: this.#movedCell(node.start), end: this.#movedCell(node.end) };
    return node.type === 5 ? this.#movedCell(node) : node;
  }

  #movedCell(cell: CellNode): CellNode {
    const { row, column } = this.place;
    const moved = (number: number, by: number, last: number): number =>
      ((number + by - 2) % last) + 1;
    return {
      ...cell,
      row: cell.rowAbsolute ? cell.row : String(moved(Number(cell.row), row, LAST_ROW)),
      col: cell.colAbsolute
        ? cell.col
        : columnLetters(moved(columnNumber(cell.col), column, LAST_COLUMN)),
    };
  }

  /** The cell of a block in the row or column of the formula, which Excel reads where a formula of an older workbook needs one value. */
  #oneCell(node: FormulaNode, readsBlocks: boolean): FormulaNode {
    const { sheet, endSheet } = node as { sheet?: string; endSheet?: string };
    if (readsBlocks || endSheet !== undefined) return node;
    const { row, column } = this.place;
    const [top, left, bottom, right] =
      node.type === 6
        ? [
            node.start.row,
            columnNumber(node.start.col),
            node.end.row,
            columnNumber(node.end.col),
          ].map(Number)
        : node.type === 13
          ? [1, columnNumber(node.startCol), LAST_ROW, columnNumber(node.endCol)]
          : node.type === 14
            ? [node.startRow, 1, node.endRow, LAST_COLUMN]
            : [];
    if (top === undefined || left === undefined || bottom === undefined || right === undefined)
      return node;
    if (left === right && row >= Math.min(top, bottom) && row <= Math.max(top, bottom))
      return cellNode(sheet, row, left);
    if (top === bottom && column >= Math.min(left, right) && column <= Math.max(left, right))
      return cellNode(sheet, top, column);
    return left === right && top === bottom
      ? cellNode(sheet, top, left)
      : { type: 4, value: "#VALUE!" };
  }
}
