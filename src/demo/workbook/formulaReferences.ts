import { columnNumber } from "../../host/cellAddress";
import { childNodes, type FormulaNode, parseFormula, plainFunctionName } from "./formulaTree";
import { type Area, type CellPosition, type ReferenceWorld, sheetSpan } from "./referenceWorld";
import { LAST_COLUMN, LAST_ROW } from "./sheetStore";
import { tableArea } from "./tableReferences";

/** What a formula depends on. */
export interface FormulaReferences {
  readonly areas: readonly Area[];
  readonly functions: ReadonlySet<string>;
  /** Names that the workbook does not define; with LET and LAMBDA, a formula defines its own. */
  readonly undefinedNames: ReadonlySet<string>;
  readonly definesNames: boolean;
}

interface SheetsNamed {
  readonly sheet?: string;
  readonly endSheet?: string;
}

class ReferenceCollector {
  readonly areas: Area[] = [];
  readonly functions = new Set<string>();
  readonly undefinedNames = new Set<string>();
  readonly #followed = new Set<string>();

  constructor(
    readonly place: CellPosition,
    readonly world: ReferenceWorld
  ) {}

  visit(node: FormulaNode, home: string): void {
    switch (node.type) {
      case 5: {
        const [row, column] = [Number(node.row), columnNumber(node.col)];
        this.#add(home, node, row, column, row, column);
        break;
      }
      case 6: {
        const { start, end } = node;
        const [top, bottom] = [Number(start.row), Number(end.row)];
        const [left, right] = [columnNumber(start.col), columnNumber(end.col)];
        this.#add(home, node.sheet === undefined ? start : node, top, left, bottom, right);
        break;
      }
      case 13:
        this.#add(home, node, 1, columnNumber(node.startCol), LAST_ROW, columnNumber(node.endCol));
        break;
      case 14:
        this.#add(home, node, node.startRow, 1, node.endRow, LAST_COLUMN);
        break;
      case 15: {
        const area = tableArea(node, this.place, this.world.tables);
        if (area !== undefined) this.areas.push(area);
        break;
      }
      case 12:
        this.#visitName(node.name, home);
        break;
      case 9:
        this.functions.add(plainFunctionName(node.name));
        if (this.world.definedName(node.name, home) !== undefined) this.#visitName(node.name, home);
        break;
      default:
        break;
    }
    for (const child of childNodes(node)) this.visit(child, home);
  }

  #add(
    home: string,
    named: SheetsNamed,
    top: number,
    left: number,
    bottom: number,
    right: number
  ): void {
    for (const sheet of sheetSpan(this.world, home, named.sheet, named.endSheet)) {
      this.areas.push({
        sheet,
        top: Math.min(top, bottom),
        left: Math.min(left, right),
        bottom: Math.max(top, bottom),
        right: Math.max(left, right),
      });
    }
  }

  #visitName(name: string, home: string): void {
    const texts = this.world.definedName(name, home);
    const key = name.toUpperCase();
    if (texts === undefined) this.undefinedNames.add(key);
    if (texts === undefined || this.#followed.has(key)) return;
    this.#followed.add(key);
    for (const text of texts) {
      const tree = parseFormula(text);
      if (tree !== undefined) this.visit(tree, home);
    }
  }
}

/** Collects what a formula in a cell refers to, including through names and tables. */
export function formulaReferences(
  tree: FormulaNode,
  place: CellPosition,
  world: ReferenceWorld
): FormulaReferences {
  const collector = new ReferenceCollector(place, world);
  collector.visit(tree, place.sheet);
  const { areas, functions, undefinedNames } = collector;
  const definesNames = functions.has("LET") || functions.has("LAMBDA");
  return { areas, functions, undefinedNames, definesNames };
}
