import type { Workbook } from "@cj-tech-master/excelts";
import type { WorkbookLike } from "@cj-tech-master/excelts/formula";
import { CalculationPasses } from "./calculationPasses";
import { calculationText } from "./calculationText";
import { calculationView } from "./calculationView";
import { calculationNames, tablePlaces } from "./definedNames";
import { dependencyOrder } from "./dependencyOrder";
import { ErrorAnswers } from "./errorAnswers";
import { type AnalysedFormula, analyseFormulas } from "./formulaAnalysis";
import { FormulaIndex, type FormulaPlace } from "./formulaIndex";
import { FunctionBridge } from "./functionBridge";
import { type LoadedSheets, loadSheets } from "./loadSheets";
import { OwnFunctionNames } from "./ownFunctionNames";
import type { RecalculationReport, UncalculatedFormula } from "./recalculationReport";
import type { StoredFormula } from "./sheetStore";
import type { HostFault, StandInHost } from "../../host/standInHost";
import { uncalculatedFormulas } from "./uncalculated";

/** A recalculated workbook before it is written. */
export interface Recalculation {
  readonly loaded: LoadedSheets;
  readonly bridge: FunctionBridge;
  readonly names: OwnFunctionNames;
  readonly report: RecalculationReport;
}

type CalculationProperties = NonNullable<WorkbookLike["calcProperties"]>;

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

/** Calculates every formula of a workbook, our functions through the stand-in host, and reports on each. */
export function recalculate(workbook: Workbook, host: StandInHost): Recalculation {
  const names = new OwnFunctionNames(host.namespace, host.functions.keys());
  const loaded = loadSheets(workbook, names);
  const { formulas, sheets } = loaded;
  for (const formula of formulas) {
    formula.calculationText = calculationText(formula.text, formula.site, names);
  }
  const definedNames = calculationNames(workbook, names);
  const analysed = analyseFormulas(formulas, {
    sheets: sheets.map((sheet) => sheet.name),
    tables: tablePlaces(workbook),
    definedNames,
    names,
  });
  const byCell = restsOn(analysed, new FormulaIndex(filledCells(formulas)));
  const { order, circles } = dependencyOrder(formulas.length, byCell);
  const bridge = new FunctionBridge(host);
  const faultsBefore = host.faults.length;
  const calcProperties: CalculationProperties = workbook.calcProperties;
  const userFunctions = bridge.engineFunctions();
  const newView = () => calculationView({ sheets, definedNames, userFunctions, calcProperties });
  const passes = new CalculationPasses({
    sheets,
    formulas,
    analysed,
    order,
    bridge,
    newView,
  });
  const outcome = passes.run();
  const notCalculated: UncalculatedFormula[] = uncalculatedFormulas({
    loaded,
    analysed,
    order,
    circles: calcProperties.iterate === true ? [] : circles,
    outcome,
    restsOn: restsOn(analysed, new FormulaIndex(filledCells(formulas))),
  });
  const report: RecalculationReport = {
    formulas: formulas.length + loaded.unreachable.length,
    formulasWithOwnFunctions: analysed.filter((entry) => entry.usesOwnFunction).length,
    ownCalls: bridge.callCount,
    spills: formulas.filter(({ height, width }) => height > 1 || width > 1).length,
    errors: new ErrorAnswers({ sheets, formulas, analysed, bridge }).all(),
    notCalculated,
    faults: withoutRepeats(host.faults.slice(faultsBefore)),
  };
  return { loaded, bridge, names, report };
}
