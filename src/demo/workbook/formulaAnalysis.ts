import { type FormulaPiece, joined } from "../../host/formulaPieces";
import type { CalculationWorld } from "./definedNames";
import { reasonToDiffer, takesOneValue } from "./engineFaults";
import { EngineFormula } from "./engineFormula";
import { type FormulaReferences, formulaReferences } from "./formulaReferences";
import {
  cellsRead,
  childNodes,
  depthOf,
  firstOf,
  type FormulaNode,
  formulaText,
  parseFormula,
  plainFunctionName,
} from "./formulaTree";
import { unknownFunctions } from "./knownFunctions";
import type { StoredFormula } from "./sheetStore";

/** What is known about a formula before the calculation. */
export interface AnalysedFormula {
  /** The formula as the calculating library receives it. */
  readonly tree?: FormulaNode;
  readonly references: FormulaReferences;
  readonly usesOwnFunction: boolean;
  /** Why its result may differ from that of Excel. */
  readonly mayDiffer?: string | undefined;
  /** Why it is not calculated; it keeps the value of the file. */
  readonly problem: string | undefined;
}

const NOTHING: FormulaReferences = {
  areas: [],
  functions: new Set(),
  undefinedNames: new Set(),
  definesNames: false,
};
/** A reference to a whole spill, which is replaced by a block before the library receives the formula. */
export const WHOLE_SPILL = "ANCHORARRAY";
/** These read the text of formulas, which is rewritten before the calculation. */
const LOOK_AT_FORMULAS = ["FORMULATEXT", "ISFORMULA"];
/** The calculating library skips more deeply nested formulas, or fails. */
const DEEPEST = 1_000;
/** The calculating library creates a value for every cell of a block. */
const MOST_CELLS_READ = 5_000_000;
const GIVES_SEVERAL = new Set(
  `BYCOL BYROW CHOOSECOLS CHOOSEROWS DROP EXPAND FILTER HSTACK MAKEARRAY MAP MUNIT RANDARRAY SCAN
  SEQUENCE SORT SORTBY TAKE TEXTSPLIT TOCOL TOROW TRANSPOSE UNIQUE VSTACK WRAPCOLS WRAPROWS`.split(
    /\s+/
  )
);
const PASSES_SEVERAL_ON = new Set(["IF", "IFERROR", "IFNA"]);

function pointsOutside({ kind, text }: FormulaPiece): boolean {
  return /^\[\d+\]$/.test(text) || (kind === "quoted" && /^'.*\[.+\]/.test(text));
}

class FormulaAnalysis {
  constructor(
    readonly formula: StoredFormula,
    readonly world: CalculationWorld
  ) {}

  result(): AnalysedFormula {
    const { site, sheet, row, column, text, kind } = this.formula;
    const nothing = { references: NOTHING, usesOwnFunction: false };
    if (kind === "data table") return { ...nothing, problem: "it is a what-if data table" };
    const pieces = this.world.names.pieces(text);
    const given = text === "" ? undefined : parseFormula(joined(pieces));
    if (given === undefined) return { ...nothing, problem: "it could not be read as a formula" };
    if (depthOf(given) > DEEPEST) return { ...nothing, problem: "it is nested too deeply" };
    const place = { sheet, row, column };
    const tree = new EngineFormula(site, place, kind !== "ordinary", this.world).of(given);
    const references = formulaReferences(tree, sheet, this.world);
    const usesOwnFunction = [...references.functions].some((name) => this.world.names.find(name));
    const problem = this.#problem(tree, references);
    return { tree, references, usesOwnFunction, mayDiffer: reasonToDiffer(tree), problem };
  }

  #problem(tree: FormulaNode, { functions }: FormulaReferences): string | undefined {
    const looking = LOOK_AT_FORMULAS.find((name) => functions.has(name));
    if (looking !== undefined) return `${looking} is not supported`;
    if (cellsRead(tree) > MOST_CELLS_READ)
      return `it reads more than ${MOST_CELLS_READ.toLocaleString("en-US")} cells`;
    if (this.world.names.pieces(this.formula.text).some(pointsOutside))
      return "it refers to another workbook";
    const table = firstOf(tree, (node) => (node.type === 15 ? node : undefined));
    if (table !== undefined) return "it refers to a part of a table that does not exist";
    const misread = firstOf(tree, (node) => this.#functionReadingOnlyFirst(node));
    if (misread === undefined) return undefined;
    return `${misread} receives several cells, of which only the first would be read`;
  }

  #functionReadingOnlyFirst(node: FormulaNode): string | undefined {
    if (node.type !== 9) return undefined;
    const name = plainFunctionName(node.name);
    const isMisread = node.args.some(
      (argument, position) => takesOneValue(name, position) && this.#isSeveral(argument)
    );
    return isMisread ? name : undefined;
  }

  #isSeveral(node: FormulaNode): boolean {
    switch (node.type) {
      case 6:
        return node.start.row !== node.end.row || node.start.col !== node.end.col;
      case 10:
        return node.rows.length > 1 || (node.rows[0]?.length ?? 0) > 1;
      case 13:
      case 14:
      case 17:
        return true;
      case 12: {
        const trees = this.world.definedName(node.name, this.formula.sheet) ?? [];
        return trees.length > 1 || trees.some((tree) => this.#isSeveral(tree));
      }
      case 9: {
        const name = plainFunctionName(node.name);
        if (GIVES_SEVERAL.has(name)) return true;
        if (!PASSES_SEVERAL_ON.has(name) && this.world.names.find(name) === undefined) return false;
        return node.args.some((argument) => this.#isSeveral(argument));
      }
      default:
        return childNodes(node).some((child) => this.#isSeveral(child));
    }
  }
}

function unknownProblem(
  { references }: AnalysedFormula,
  sheet: string,
  unknown: ReadonlySet<string>,
  world: CalculationWorld
): string | undefined {
  const { functions, undefinedNames, definesNames } = references;
  const name = [...functions].find(
    (each) =>
      unknown.has(each) &&
      !(definesNames && undefinedNames.has(each)) &&
      world.definedName(each, sheet) === undefined
  );
  if (name !== undefined) return `the function ${name} is not supported`;
  const [missing] = undefinedNames;
  if (missing === undefined || definesNames) return undefined;
  return `the name ${missing} is not defined in this workbook`;
}

/** Reads every formula, writes it for the calculating library, and finds those that cannot be calculated, with the reason. */
export function analyseFormulas(
  formulas: readonly StoredFormula[],
  world: CalculationWorld
): AnalysedFormula[] {
  const analysed = formulas.map((formula) => new FormulaAnalysis(formula, world).result());
  const called = new Set(analysed.flatMap(({ references }) => [...references.functions]));
  const foreign = [...called].filter((name) => !world.names.find(name) && name !== WHOLE_SPILL);
  const unknown = unknownFunctions(foreign);
  return formulas.map((formula, site) => {
    const entry = analysed[site] ?? { references: NOTHING, usesOwnFunction: false, problem: "" };
    if (entry.tree !== undefined) formula.calculationText = formulaText(entry.tree);
    return {
      ...entry,
      problem: entry.problem ?? unknownProblem(entry, formula.sheet, unknown, world),
    };
  });
}
