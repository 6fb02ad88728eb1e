import { CalculationPasses, type PassesOutcome } from "./calculationPasses";
import { calculationView } from "./calculationView";
import { calculationWorld } from "./definedNames";
import { dependencyOrder } from "./dependencyOrder";
import { ErrorAnswers } from "./errorAnswers";
import { type AnalysedFormula, analyseFormulas } from "./formulaAnalysis";
import { FormulaIndex, type FormulaPlace } from "./formulaIndex";
import { FunctionBridge } from "./functionBridge";
import { neededFormulas } from "./neededFormulas";
import type { OwnFunctionNames } from "./ownFunctionNames";
import type { LoadedWorkbook } from "./readWorkbook";
import type { RecalculationReport } from "./recalculationReport";
import { resultsThatDiffer } from "./resultsThatDiffer";
import type { StoredFormula } from "./sheetStore";
import type { HostFault, StandInHost } from "../../host/standInHost";
import { uncalculatedFormulas } from "./uncalculated";

/** A recalculated workbook before it is written. */
export interface Recalculation {
  readonly loaded: LoadedWorkbook;
  readonly analysed: readonly AnalysedFormula[];
  readonly bridge: FunctionBridge;
  readonly names: OwnFunctionNames;
  /** The formulas whose results are written; every other keeps the value of the file. */
  readonly calculated: ReadonlySet<number>;
  readonly report: RecalculationReport;
}

function* filledCells(formulas: readonly StoredFormula[]): Generator<FormulaPlace> {
  for (const { site, sheet, row, column, height, width } of formulas) {
    for (let down = 0; down < height; down += 1) {
      for (let across = 0; across < width; across += 1) {
        yield { site, sheet, row: row + down, column: column + across };
      }
    }
  }
}

function restsOn(
  analysed: readonly AnalysedFormula[],
  index: FormulaIndex
): (site: number) => Iterable<number> {
  return function* references(site) {
    for (const area of analysed[site]?.references.areas ?? []) yield* index.within(area);
  };
}

// A call with a fault is repeated in every pass.
function withoutRepeats(faults: readonly HostFault[]): HostFault[] {
  return [...new Map(faults.map((fault) => [JSON.stringify(fault), fault])).values()];
}

/**
 * Calculates a workbook, our functions through the stand-in host, and reports on each formula. Formulas whose value in the file can be
 * kept are not calculated: the functions of the library differ from those of Excel in places.
 */
export function recalculate(
  loaded: LoadedWorkbook,
  names: OwnFunctionNames,
  host: StandInHost
): Recalculation {
  const { formulas, sheets, calculation } = loaded;
  const world = calculationWorld(loaded, names);
  const analysed = analyseFormulas(formulas, world);
  const byCell = () => restsOn(analysed, new FormulaIndex(filledCells(formulas)));
  const { order, circles } = dependencyOrder(formulas.length, byCell());
  const forbidden = calculation.iterate ? [] : circles;
  const bridge = new FunctionBridge(host);
  const faultsBefore = host.faults.length;
  const userFunctions = bridge.engineFunctions();
  const newView = () =>
    calculationView({
      sheets,
      definedNames: world.definedNames,
      userFunctions,
      calcProperties: calculation,
    });
  const isKept = new Set(forbidden.flat());
  for (const { site } of formulas) if (analysed[site]?.problem !== undefined) isKept.add(site);
  const needed = () =>
    calculation.fullCalcOnLoad
      ? new Set(order)
      : neededFormulas({ formulas, analysed, order, restsOn: byCell() });
  let wanted = needed();
  let outcome: PassesOutcome;
  // A result that fills more cells than in the file can make more formulas necessary.
  for (;;) {
    const { size } = wanted;
    const able = new Set([...wanted].filter((site) => !isKept.has(site)));
    outcome = new CalculationPasses({
      sheets,
      formulas,
      analysed,
      order,
      bridge,
      wanted: able,
      newView,
    }).run();
    wanted = new Set([...wanted, ...needed()]);
    if (wanted.size === size) break;
  }
  const notCalculated = uncalculatedFormulas({
    formulas,
    analysed,
    order: order.filter((site) => wanted.has(site)),
    circles: forbidden,
    outcome,
    restsOn: byCell(),
  });
  const calculated = new Set(
    formulas
      .filter(({ site, answers }) => wanted.has(site) && answers > 0 && !isKept.has(site))
      .map(({ site }) => site)
  );
  for (const site of outcome.unsettled) calculated.delete(site);
  const report: RecalculationReport = {
    formulas: formulas.length,
    kept: formulas.length - wanted.size,
    formulasWithOwnFunctions: analysed.filter((entry) => entry.usesOwnFunction).length,
    ownCalls: bridge.callCount,
    spills: formulas.filter(({ height, width }) => height > 1 || width > 1).length,
    errors: new ErrorAnswers({ sheets, formulas, analysed, bridge }).all(),
    notCalculated,
    mayDiffer: resultsThatDiffer(
      formulas.filter(({ site }) => calculated.has(site)),
      analysed,
      sheets,
      bridge.corrections.doubtful
    ),
    faults: withoutRepeats(host.faults.slice(faultsBefore)),
    lostSignature: false,
  };
  return { loaded, analysed, bridge, names, calculated, report };
}
