import type { HostFault } from "../../host/standInHost";

/** A place in the workbook. */
export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A cell whose answer is an error, with the sentence a preparer would be shown. */
export interface ErrorAnswer extends CellPlace {
  readonly error: string;
  /** What the function says; empty when the error carries no sentence. */
  readonly sentence: string;
  /** The cell the error was taken over from, when it began elsewhere. */
  readonly takenFrom: CellPlace | undefined;
}

/** A formula that was not calculated, and why. */
export interface UncalculatedFormula extends CellPlace {
  readonly text: string;
  readonly reason: string;
}

/** What became of every formula of a workbook. */
export interface RecalculationReport {
  readonly formulas: number;
  readonly formulasWithOwnFunctions: number;
  readonly ownCalls: number;
  readonly spills: number;
  readonly errors: readonly ErrorAnswer[];
  readonly notCalculated: readonly UncalculatedFormula[];
  readonly faults: readonly HostFault[];
}

/** Whether every formula was calculated and none of our functions failed. */
export function isComplete(report: RecalculationReport): boolean {
  return report.notCalculated.length === 0 && report.faults.length === 0;
}
