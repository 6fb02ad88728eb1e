import { cellAddress } from "../../host/cellAddress";
import type { PassesOutcome } from "./calculationPasses";
import { spreadMarks } from "./dependencyOrder";
import type { AnalysedFormula } from "./formulaAnalysis";
import type { UncalculatedFormula } from "./recalculationReport";
import type { StoredFormula } from "./sheetStore";

/** The input for the list of formulas that were not calculated. */
export interface UncalculatedInput {
  readonly formulas: readonly StoredFormula[];
  readonly analysed: readonly AnalysedFormula[];
  readonly order: readonly number[];
  readonly circles: readonly (readonly number[])[];
  readonly outcome: PassesOutcome;
  readonly restsOn: (site: number) => Iterable<number>;
}

const MOST_NAMED_IN_A_CIRCLE = 6;

function circleReasons({ circles }: UncalculatedInput, place: (site: number) => string) {
  return new Map(
    circles.flatMap((circle) => {
      const shown = circle.slice(0, MOST_NAMED_IN_A_CIRCLE).map(place).join(", ");
      const more = circle.length > MOST_NAMED_IN_A_CIRCLE ? ", …" : "";
      const reason = `it is part of a circular reference: ${shown}${more}`;
      return circle.map((site) => [site, reason] as const);
    })
  );
}

/** Every formula that was not calculated, and every formula that depends on one, with the reason. */
export function uncalculatedFormulas(input: UncalculatedInput): UncalculatedFormula[] {
  const { formulas, analysed, order, outcome, restsOn } = input;
  const place = (site: number): string => {
    const { sheet = "", row = 0, column = 0 } = formulas[site] ?? {};
    return `${sheet}!${cellAddress(row, column)}`;
  };
  const circles = circleReasons(input, place);
  const reasons = new Map<number, string>();
  const origins = new Map<number, number>();
  for (const site of order) {
    const left = outcome.leftOut.has(site) ? "the calculation returned no result" : undefined;
    const unsettled = outcome.unsettled.has(site) ? "its result never stops changing" : undefined;
    const reason = analysed[site]?.problem ?? circles.get(site) ?? left ?? unsettled;
    if (reason === undefined) continue;
    reasons.set(site, reason);
    origins.set(site, site);
  }
  spreadMarks(
    order,
    restsOn,
    (site) => reasons.has(site),
    (site, cause) => {
      const origin = origins.get(cause) ?? cause;
      reasons.set(site, `it depends on ${place(origin)}, which was not calculated`);
      origins.set(site, origin);
    }
  );
  return formulas.flatMap(({ site, sheet, row, column, text }) => {
    const reason = reasons.get(site);
    return reason === undefined ? [] : [{ sheet, row, column, text, reason }];
  });
}
