import type { PassesOutcome } from "./calculationPasses";
import { cellAddress } from "../../host/cellAddress";
import type { AnalysedFormula } from "./formulaAnalysis";
import type { LoadedWorkbook } from "./readWorkbook";
import type { UncalculatedFormula } from "./recalculationReport";
import type { StoredFormula } from "./sheetStore";

/** The input for the list of formulas that were not calculated. */
export interface UncalculatedInput {
  readonly loaded: LoadedWorkbook;
  readonly analysed: readonly AnalysedFormula[];
  readonly order: readonly number[];
  readonly circles: readonly (readonly number[])[];
  readonly outcome: PassesOutcome;
  readonly restsOn: (site: number) => Iterable<number>;
}

const MOST_NAMED_IN_A_CIRCLE = 6;

function placeName(formula: StoredFormula): string {
  return `${formula.sheet}!${cellAddress(formula.row, formula.column)}`;
}

function circleReasons(input: UncalculatedInput): Map<number, string> {
  const { formulas } = input.loaded;
  const reasons = new Map<number, string>();
  for (const circle of input.circles) {
    const members = circle.flatMap((site) => formulas[site] ?? []).map(placeName);
    const shown = members.slice(0, MOST_NAMED_IN_A_CIRCLE).join(", ");
    const more = members.length > MOST_NAMED_IN_A_CIRCLE ? ", …" : "";
    for (const site of circle) {
      reasons.set(site, `it is part of a circular reference: ${shown}${more}`);
    }
  }
  return reasons;
}

function ownReason(
  site: number,
  input: UncalculatedInput,
  circles: ReadonlyMap<number, string>
): string | undefined {
  const known = input.analysed[site]?.problem ?? circles.get(site);
  if (known !== undefined) return known;
  if (input.outcome.leftOut.has(site)) return "the calculation returned no result";
  return input.outcome.unsettled.has(site) ? "its result never stops changing" : undefined;
}

/** Every formula that was not calculated, and every formula that depends on one, with the reason. */
export function uncalculatedFormulas(input: UncalculatedInput): UncalculatedFormula[] {
  const { formulas } = input.loaded;
  const circles = circleReasons(input);
  const reasons = new Map<number, string>();
  const origins = new Map<number, number>();
  for (const site of input.order) {
    const reason = ownReason(site, input, circles);
    if (reason !== undefined) {
      reasons.set(site, reason);
      origins.set(site, site);
    }
  }
  spread(input, reasons, origins);
  return formulas.flatMap((formula) => {
    const reason = reasons.get(formula.site);
    if (reason === undefined) return [];
    const { sheet, row, column, text } = formula;
    return [{ sheet, row, column, text, reason }];
  });
}

// A spill can make a formula depend on one later in the order, so this repeats until all are marked.
function spread(
  input: UncalculatedInput,
  reasons: Map<number, string>,
  origins: Map<number, number>
): void {
  if (reasons.size === 0) return;
  for (let marked = -1; marked !== reasons.size;) {
    marked = reasons.size;
    for (const site of input.order) {
      if (reasons.has(site)) continue;
      for (const cause of input.restsOn(site)) {
        const origin = origins.get(cause);
        const formula = origin === undefined ? undefined : input.loaded.formulas[origin];
        if (origin === undefined || formula === undefined) continue;
        reasons.set(site, `it depends on ${placeName(formula)}, which was not calculated`);
        origins.set(site, origin);
        break;
      }
    }
  }
}
