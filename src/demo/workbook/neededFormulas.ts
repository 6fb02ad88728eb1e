import { AWARE_OF_EACH_OTHER } from "./calculationPasses";
import type { AnalysedFormula } from "./formulaAnalysis";
import type { StoredFormula } from "./sheetStore";

/** Functions whose result can change although nothing that they refer to has changed. */
const VOLATILE = "CELL INDIRECT INFO NOW OFFSET RAND RANDARRAY RANDBETWEEN TODAY".split(" ");

/** What decides which formulas are calculated. */
export interface NeedInput {
  readonly formulas: readonly StoredFormula[];
  readonly analysed: readonly AnalysedFormula[];
  /** Formulas in an order in which each follows the formulas it depends on. */
  readonly order: readonly number[];
  readonly restsOn: (site: number) => Iterable<number>;
}

function isNeeded(formula: StoredFormula, analysed: AnalysedFormula | undefined): boolean {
  const { functions } = analysed?.references ?? {};
  if (!formula.hasValue || analysed?.usesOwnFunction === true) return true;
  if (formula.kind === "dynamic" && formula.reference === undefined) return true;
  return VOLATILE.some((name) => functions?.has(name) === true);
}

/**
 * The formulas whose values in the file cannot be kept: those that use our functions, that have no value, that are volatile, and all
 * that depend on one of them.
 */
export function neededFormulas({ formulas, analysed, order, restsOn }: NeedInput): Set<number> {
  const needed = new Set(
    formulas.filter((formula) => isNeeded(formula, analysed[formula.site])).map(({ site }) => site)
  );
  const isAware = ({ site }: StoredFormula): boolean =>
    AWARE_OF_EACH_OTHER.some((name) => analysed[site]?.references.functions.has(name) === true);
  // A spill can make a formula depend on one later in the order, so this repeats until nothing is added.
  for (let before = -1; before !== needed.size;) {
    before = needed.size;
    if (before === 0) break;
    const aware = formulas.filter(isAware);
    if (aware.some(({ site }) => needed.has(site))) for (const { site } of aware) needed.add(site);
    for (const site of order) {
      if (needed.has(site)) continue;
      for (const cause of restsOn(site)) {
        if (!needed.has(cause)) continue;
        needed.add(site);
        break;
      }
    }
  }
  return needed;
}
