import type { CalculationNames } from "./definedNames";
import { isSeveralCells } from "./definedNames";
import { reasonToDiffer } from "./formulaCorrections";
import { type FormulaReferences, formulaReferences } from "./formulaReferences";
import { cellsRead, depthOf, parseFormula } from "./formulaTree";
import { unknownFunctions } from "./knownFunctions";
import type { OwnFunctionNames } from "./ownFunctionNames";
import type { ReferenceWorld, TablePlace } from "./referenceWorld";
import { functionReadingOnlyFirstCell } from "./severalCells";
import type { StoredFormula } from "./sheetStore";

/** What is known about a formula before the calculation. */
export interface AnalysedFormula {
  readonly references: FormulaReferences;
  readonly usesOwnFunction: boolean;
  /** Why its result may differ from that of Excel. */
  readonly mayDiffer?: string | undefined;
  /** Why it is not calculated; it keeps the value of the file. */
  readonly problem: string | undefined;
}

/** The names and functions that formulas may use. */
export interface AnalysisWorld {
  readonly sheets: readonly string[];
  readonly tables: readonly TablePlace[];
  readonly definedNames: CalculationNames;
  readonly names: OwnFunctionNames;
}

const NOTHING: FormulaReferences = {
  areas: [],
  functions: new Set(),
  undefinedNames: new Set(),
  definesNames: false,
};
/** These are rewritten before the library receives the formula. */
const REWRITTEN = "ANCHORARRAY";
/** These read the text of formulas, which is rewritten before the calculation. */
const LOOK_AT_FORMULAS = ["FORMULATEXT", "ISFORMULA"];

function pointsOutside(text: string, names: OwnFunctionNames): boolean {
  const pieces = names.pieces(text);
  return pieces.some(
    (piece) =>
      /^\[\d+\]$/.test(piece.text) || (piece.kind === "quoted" && /^'.*\[.+\]/.test(piece.text))
  );
}

/** The calculating library skips more deeply nested formulas, or fails. */
const DEEPEST = 1_000;
/** The calculating library creates a value for every cell of a block. */
const MOST_CELLS_READ = 5_000_000;

function analyse(formula: StoredFormula, world: AnalysisWorld): AnalysedFormula {
  if (formula.kind === "data table") {
    const problem = "it is a what-if data table";
    return { references: NOTHING, usesOwnFunction: false, problem };
  }
  const tree = parseFormula(formula.calculationText);
  if (tree === undefined || formula.text === "") {
    const problem = "it could not be read as a formula";
    return { references: NOTHING, usesOwnFunction: false, problem };
  }
  if (depthOf(tree) > DEEPEST) {
    const problem = "it is nested too deeply";
    return { references: NOTHING, usesOwnFunction: false, problem };
  }
  const place = {
    sheet: formula.sheet,
    row: formula.row,
    column: formula.column,
  };
  const referenceWorld: ReferenceWorld = {
    sheets: world.sheets,
    tables: world.tables,
    definedName: (name, sheet) => world.definedNames.find(name, sheet),
  };
  const references = formulaReferences(tree, place, referenceWorld);
  const usesOwnFunction = [...references.functions].some((name) => world.names.find(name));
  const misread = functionReadingOnlyFirstCell(tree, {
    isOwnFunction: (name) => world.names.find(name) !== undefined,
    nameIsSeveral: (name) => isSeveralCells(world.definedNames.find(name, formula.sheet) ?? [""]),
  });
  const looking = LOOK_AT_FORMULAS.find((name) => references.functions.has(name));
  let problem: string | undefined;
  if (looking !== undefined) problem = `${looking} is not supported`;
  else if (cellsRead(tree) > MOST_CELLS_READ)
    problem = `it reads more than ${MOST_CELLS_READ.toLocaleString("en-US")} cells`;
  else if (pointsOutside(formula.text, world.names)) problem = "it refers to another workbook";
  else if (misread !== undefined) {
    problem = `${misread} receives several cells, of which only the first would be read`;
  }
  return { references, usesOwnFunction, mayDiffer: reasonToDiffer(tree), problem };
}

function unknownProblem(
  formula: StoredFormula,
  analysed: AnalysedFormula,
  unknown: ReadonlySet<string>,
  world: AnalysisWorld
): string | undefined {
  const { functions, undefinedNames, definesNames } = analysed.references;
  for (const name of functions) {
    const isDefinedHere = definesNames && undefinedNames.has(name);
    const isDefinedName = world.definedNames.find(name, formula.sheet) !== undefined;
    if (unknown.has(name) && !isDefinedHere && !isDefinedName) {
      return `the function ${name} is not supported`;
    }
  }
  const [name] = undefinedNames;
  if (name === undefined || definesNames) return undefined;
  return `the name ${name} is not defined in this workbook`;
}

/** Reads every formula and finds those that cannot be calculated, with the reason. */
export function analyseFormulas(
  formulas: readonly StoredFormula[],
  world: AnalysisWorld
): AnalysedFormula[] {
  const analysed = formulas.map((formula) => analyse(formula, world));
  const called = new Set(analysed.flatMap(({ references }) => [...references.functions]));
  const foreign = [...called].filter((name) => !world.names.find(name) && name !== REWRITTEN);
  const unknown = unknownFunctions(foreign);
  return analysed.map((entry, site) => {
    const formula = formulas[site];
    if (entry.problem !== undefined || formula === undefined) return entry;
    return {
      ...entry,
      problem: unknownProblem(formula, entry, unknown, world),
    };
  });
}
