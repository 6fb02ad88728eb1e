import type { HostFault } from "../../host/standInHost";
import type { CellPosition } from "./referenceWorld";

/** A cell that shows an error, with the message that Excel would show. */
export interface ErrorAnswer extends CellPosition {
  readonly error: string;
  /** The message of the function; empty when the error has none. */
  readonly sentence: string;
  /** The cell in which the error began, when that is another cell. */
  readonly takenFrom: CellPosition | undefined;
}

/** A formula that was not calculated, or whose result may differ from that of Excel, and why. */
export interface UncalculatedFormula extends CellPosition {
  readonly text: string;
  readonly reason: string;
}

/** The result of a recalculation for every formula of a workbook. */
export interface RecalculationReport {
  readonly formulas: number;
  /** Formulas that were not calculated because the file has a value for them that nothing changed. */
  readonly kept: number;
  readonly formulasWithOwnFunctions: number;
  readonly ownCalls: number;
  readonly spills: number;
  readonly errors: readonly ErrorAnswer[];
  readonly notCalculated: readonly UncalculatedFormula[];
  /** Formulas that were calculated, but whose result may differ from that of Excel. */
  readonly mayDiffer: readonly UncalculatedFormula[];
  readonly faults: readonly HostFault[];
  /** Whether a digital signature was removed from the file, because its content changed. */
  readonly lostSignature: boolean;
}

/** Whether every formula was calculated and none of our functions failed. */
export function isComplete(report: RecalculationReport): boolean {
  return report.notCalculated.length === 0 && report.faults.length === 0;
}
