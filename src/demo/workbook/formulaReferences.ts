import { columnNumber } from "../../host/cellAddress";
import { type CellNode, childNodes, type FormulaNode, plainFunctionName } from "./formulaTree";
import { type Area, type ReferenceWorld, sheetSpan } from "./referenceWorld";
import { LAST_ROW } from "./sheetStore";

/** What a formula depends on. */
export interface FormulaReferences {
  readonly areas: readonly Area[];
  readonly functions: ReadonlySet<string>;
  /** Names that the workbook does not define; with LET and LAMBDA, a formula defines its own. */
  readonly undefinedNames: ReadonlySet<string>;
  readonly definesNames: boolean;
}

class ReferenceCollector {
  readonly areas: Area[] = [];
  readonly functions = new Set<string>();
  readonly undefinedNames = new Set<string>();
  readonly #followed = new Set<string>();

  constructor(
    readonly home: string,
    readonly world: ReferenceWorld
  ) {}

  visit(node: FormulaNode): void {
    switch (node.type) {
      case 5:
        this.#add(node, node, node);
        break;
      case 6:
        this.#add(node.sheet === undefined ? node.start : node, node.start, node.end);
        break;
      case 13:
        this.#add(node, { row: 1, col: node.startCol }, { row: LAST_ROW, col: node.endCol });
        break;
      case 14:
        this.#add(node, { row: node.startRow, col: "A" }, { row: node.endRow, col: "XFD" });
        break;
      case 12:
        this.#visitName(node.name);
        break;
      case 9:
        this.functions.add(plainFunctionName(node.name));
        if (this.world.definedName(node.name, this.home) !== undefined) this.#visitName(node.name);
        break;
      default:
        break;
    }
    for (const child of childNodes(node)) this.visit(child);
  }

  #add(
    { sheet, endSheet }: Pick<CellNode, "sheet" | "endSheet">,
    first: { row: string | number; col: string },
    last: { row: string | number; col: string }
  ): void {
    const rows = [Number(first.row), Number(last.row)];
    const columns = [columnNumber(first.col), columnNumber(last.col)];
    for (const name of sheetSpan(this.world, this.home, sheet, endSheet))
      this.areas.push({
        sheet: name,
        top: Math.min(...rows),
        left: Math.min(...columns),
        bottom: Math.max(...rows),
        right: Math.max(...columns),
      });
  }

  #visitName(name: string): void {
    const trees = this.world.definedName(name, this.home);
    const key = name.toUpperCase();
    if (trees === undefined) this.undefinedNames.add(key);
    if (this.#followed.has(key)) return;
    this.#followed.add(key);
    for (const tree of trees ?? []) this.visit(tree);
  }
}

/** Collects what a formula on a sheet refers to, including through names. */
export function formulaReferences(
  tree: FormulaNode,
  sheet: string,
  world: ReferenceWorld
): FormulaReferences {
  const collector = new ReferenceCollector(sheet, world);
  collector.visit(tree);
  const { areas, functions, undefinedNames } = collector;
  const definesNames = functions.has("LET") || functions.has("LAMBDA");
  return { areas, functions, undefinedNames, definesNames };
}
