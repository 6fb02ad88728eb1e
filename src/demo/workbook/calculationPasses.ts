import { calculateFormulas, type WorkbookLike } from "@cj-tech-master/excelts/formula";
import { columnLetters, columnNumber } from "../../host/cellAddress";
import { type AnalysedFormula, WHOLE_SPILL } from "./formulaAnalysis";
import { type FormulaNode, formulaText, plainFunctionName, withChildren } from "./formulaTree";
import type { FunctionBridge } from "./functionBridge";
import type { SheetStore, StoredFormula } from "./sheetStore";

/** The library forgets formula texts beyond 10,000, and then skips cells without a message. */
const FORMULAS_IN_A_PASS = 9_000;
const MOST_ROUNDS = 12;
const ROUNDS_WITH_CHANCE = 3;
const CHANGING = ["RAND", "RANDBETWEEN", "RANDARRAY", "NOW", "TODAY"];
const REFERRING_AT_WILL = ["INDIRECT", "OFFSET"];
/** Functions that ignore cells with the same function. */
export const AWARE_OF_EACH_OTHER = ["SUBTOTAL", "AGGREGATE"];

/** The input of the passes. */
export interface PassesInput {
  readonly sheets: readonly SheetStore[];
  readonly formulas: readonly StoredFormula[];
  readonly analysed: readonly AnalysedFormula[];
  /** Formulas in an order in which each follows the formulas it depends on. */
  readonly order: readonly number[];
  readonly bridge: FunctionBridge;
  /** The formulas to calculate. */
  readonly wanted: ReadonlySet<number>;
  readonly newView: () => WorkbookLike;
}

interface Pass {
  /** Kept between passes only where a result spills, because the library remembers spills by view. */
  view: WorkbookLike | undefined;
  readonly formulas: readonly StoredFormula[];
}

/** Which formulas the library calculated, and which never reached a final value. */
export interface PassesOutcome {
  readonly leftOut: ReadonlySet<number>;
  readonly unsettled: ReadonlySet<number>;
}

/** Calculates all formulas in as many passes as needed, until no value changes. */
export class CalculationPasses {
  readonly #passes: readonly Pass[];
  readonly #sheets: ReadonlyMap<string, SheetStore>;
  readonly #leftOut = new Set<number>();

  constructor(readonly input: PassesInput) {
    this.#sheets = new Map(input.sheets.map((sheet) => [sheet.name.toLowerCase(), sheet]));
    this.#passes = this.#plan();
  }

  /** Runs the passes. */
  run(): PassesOutcome {
    for (const site of this.input.wanted) {
      const formula = this.input.formulas[site];
      if (formula !== undefined) this.#clearSpill(formula);
    }
    this.#runOnce();
    if (!this.#needsAnotherLook()) return { leftOut: this.#leftOut, unsettled: new Set() };
    const mostRounds = this.#uses(CHANGING) ? ROUNDS_WITH_CHANCE : MOST_ROUNDS;
    let unsettled = new Set<number>();
    let before = this.#fingerprints();
    for (let round = 1; round < mostRounds; round += 1) {
      this.#runOnce();
      const after = this.#fingerprints();
      unsettled = new Set(after.flatMap((text, site) => (text === before[site] ? [] : [site])));
      if (unsettled.size === 0) break;
      before = after;
    }
    return {
      leftOut: this.#leftOut,
      unsettled: this.#uses(CHANGING) ? new Set() : unsettled,
    };
  }

  #plan(): Pass[] {
    const { order, formulas, analysed } = this.input;
    const wanted = order.filter((site) => this.input.wanted.has(site));
    // SUBTOTAL ignores other subtotals, so they must be formulas in every pass.
    const everywhere = wanted.filter((site) =>
      AWARE_OF_EACH_OTHER.some((name) => analysed[site]?.references.functions.has(name))
    );
    const passes: Pass[] = [];
    for (let from = 0; from < wanted.length; from += FORMULAS_IN_A_PASS) {
      const sites = new Set([...wanted.slice(from, from + FORMULAS_IN_A_PASS), ...everywhere]);
      const chosen = [...sites].flatMap((site) => formulas[site] ?? []);
      passes.push({ view: undefined, formulas: chosen });
    }
    return passes;
  }

  #runOnce(): void {
    for (const pass of this.#passes) {
      const { formulas } = pass;
      for (const formula of formulas) this.#writeSpillReferences(formula);
      for (const formula of formulas) {
        formula.active = true;
        formula.answers = 0;
        this.input.bridge.forget(formula.site);
        formula.height = 1;
        formula.width = 1;
      }
      pass.view ??= this.input.newView();
      calculateFormulas(pass.view);
      for (const formula of formulas) {
        formula.active = false;
        if (formula.answers === 0) this.#leftOut.add(formula.site);
        else this.#leftOut.delete(formula.site);
      }
      if (!formulas.some(fillsSeveralCells)) pass.view = undefined;
    }
  }

  // The values of the last spill are deleted before it spills again. The cells of an older array formula are written with it.
  #clearSpill(formula: StoredFormula): void {
    const { row, column, height, width, kind } = formula;
    const sheet = kind === "array" ? undefined : this.#sheets.get(formula.sheet.toLowerCase());
    for (let down = 0; down < height; down += 1) {
      for (let across = 0; across < width; across += 1) {
        const cell = sheet?.find(row + down, column + across);
        if (cell !== undefined && cell.ownFormula === undefined) cell.content = null;
      }
    }
  }

  /** Replaces references to whole spills by the blocks that the spills fill now. */
  #writeSpillReferences({ site, sheet }: StoredFormula): void {
    const { tree, references } = this.input.analysed[site] ?? {};
    const formula = this.input.formulas[site];
    if (formula === undefined || tree === undefined || !references?.functions.has(WHOLE_SPILL))
      return;
    const written = (node: FormulaNode): FormulaNode => {
      const start =
        node.type === 9 && plainFunctionName(node.name) === WHOLE_SPILL ? node.args[0] : undefined;
      if (start?.type !== 5) return withChildren(node, written);
      const [row, column] = [Number(start.row), columnNumber(start.col)];
      const home = this.#sheets.get((start.sheet ?? sheet).toLowerCase());
      const spill = home?.find(row, column)?.ownFormula;
      if (spill === undefined) return node;
      const [bottom, right] = [row + spill.height - 1, column + spill.width - 1];
      return {
        ...start,
        type: 6,
        start,
        end: { ...start, row: String(bottom), col: columnLetters(right) },
      };
    };
    formula.calculationText = formulaText(written(tree));
  }

  #uses(functions: readonly string[]): boolean {
    return [...this.input.wanted].some((site) =>
      functions.some((name) => this.input.analysed[site]?.references.functions.has(name))
    );
  }

  #needsAnotherLook(): boolean {
    return this.input.formulas.some(fillsSeveralCells) || this.#uses(REFERRING_AT_WILL);
  }

  #fingerprints(): string[] {
    return this.input.formulas.map((formula) => {
      const cells: unknown[] = [];
      const sheet = this.#sheets.get(formula.sheet.toLowerCase());
      for (let row = 0; row < formula.height; row += 1) {
        for (let column = 0; column < formula.width; column += 1) {
          cells.push(sheet?.find(formula.row + row, formula.column + column)?.content ?? null);
        }
      }
      return JSON.stringify([formula.height, formula.width, cells]);
    });
  }
}

function fillsSeveralCells(formula: StoredFormula): boolean {
  return formula.kind === "array" || formula.height > 1 || formula.width > 1;
}
