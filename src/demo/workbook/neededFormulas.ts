import { AWARE_OF_EACH_OTHER } from "./calculationPasses";
import { spreadMarks } from "./dependencyOrder";
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

/**
 * The formulas whose values in the file cannot be kept: those that use our functions, that have no value, that are volatile, and all
 * that depend on one of them.
 */
export function neededFormulas({ formulas, analysed, order, restsOn }: NeedInput): Set<number> {
  const calls = (site: number, names: readonly string[]): boolean =>
    names.some((name) => analysed[site]?.references.functions.has(name) === true);
  const isNeeded = ({ site, hasValue, kind, reference }: StoredFormula): boolean =>
    !hasValue ||
    analysed[site]?.usesOwnFunction === true ||
    (kind === "dynamic" && reference === undefined) ||
    calls(site, VOLATILE);
  const needed = new Set(formulas.filter(isNeeded).map(({ site }) => site));
  const aware = order.filter((site) => calls(site, AWARE_OF_EACH_OTHER));
  function* causes(site: number): Generator<number> {
    yield* restsOn(site);
    if (calls(site, AWARE_OF_EACH_OTHER)) yield* aware;
  }
  spreadMarks(
    order,
    causes,
    (site) => needed.has(site),
    (site) => needed.add(site)
  );
  return needed;
}
