import { cellAddress } from "../../host/cellAddress";
import type { RecalculationReport, UncalculatedFormula } from "../workbook/recalculationReport";
import type { CellPosition } from "../workbook/referenceWorld";
import { printable } from "./textTable";

/** The number of errors listed, unless the command line asks for all. */
const MOST_ERRORS_SHOWN = 100;
const LONGEST_FORMULA_SHOWN = 200;

function place({ sheet, row, column }: CellPosition): string {
  return printable(`${sheet}!${cellAddress(row, column)}`);
}

function counted(count: number, one: string, several: string): string {
  return `${count.toLocaleString("en-US")} ${count === 1 ? one : several}`;
}

function errorLines(report: RecalculationReport, all: boolean): string[] {
  if (report.errors.length === 0) return ["No cell shows an error."];
  const shown = all ? report.errors : report.errors.slice(0, MOST_ERRORS_SHOWN);
  const lines = shown.map((error) => {
    const said = error.takenFrom === undefined ? error.sentence : `from ${place(error.takenFrom)}`;
    return `  ${place(error)}  ${error.error}  ${printable(said)}`.trimEnd();
  });
  const more = report.errors.length - shown.length;
  return [
    `${counted(report.errors.length, "cell shows", "cells show")} an error:`,
    ...lines,
    ...(more > 0
      ? [`  and ${more.toLocaleString("en-US")} more. Use --all to list all errors.`]
      : []),
  ];
}

function formulaLines(formulas: readonly UncalculatedFormula[]): string[] {
  return formulas.map((formula) => {
    const more = formula.text.length > LONGEST_FORMULA_SHOWN ? "…" : "";
    const shown = printable(formula.text.slice(0, LONGEST_FORMULA_SHOWN)) + more;
    const text = shown === "" ? "" : `=${shown}  `;
    return `  ${place(formula)}  ${text}${printable(formula.reason)}`;
  });
}

function differingLines({ mayDiffer }: RecalculationReport): string[] {
  if (mayDiffer.length === 0) return [];
  return [
    `${counted(mayDiffer.length, "result", "results")} may differ from Excel. Check ${mayDiffer.length === 1 ? "it" : "them"} in Excel:`,
    ...formulaLines(mayDiffer),
  ];
}

function uncalculatedLines(report: RecalculationReport): string[] {
  if (report.notCalculated.length === 0) {
    return [
      report.kept === 0 ? "Every formula was calculated." : "Every other formula was calculated.",
    ];
  }
  return [
    `${counted(report.notCalculated.length, "formula was", "formulas were")} NOT calculated:`,
    ...formulaLines(report.notCalculated),
  ];
}

function faultLines(report: RecalculationReport): string[] {
  if (report.faults.length === 0) return [];
  const lines = report.faults.map(
    ({ functionName, argumentsText, fault }) =>
      `  ${functionName}${printable(argumentsText)}: ${printable(fault)}`
  );
  return [`${counted(report.faults.length, "fault", "faults")} of the add-in:`, ...lines];
}

function keptLines({ kept, lostSignature }: RecalculationReport): string[] {
  const lines: string[] = [];
  if (kept > 0)
    lines.push(
      `${counted(kept, "formula keeps its saved value", "formulas keep their saved values")}, because no result of the add-in affects ${kept === 1 ? "it" : "them"}.`
    );
  if (lostSignature) lines.push("The digital signature was removed, because the file changed.");
  return lines;
}

/** The result of a recalculation, as lines for the terminal. */
export function recalculationSummary(report: RecalculationReport, all = false): string[] {
  const own = counted(report.formulasWithOwnFunctions, "uses", "use");
  const calls = counted(report.ownCalls, "call", "calls");
  const spills = counted(report.spills, "result fills", "results fill");
  return [
    `${counted(report.formulas, "formula", "formulas")}: ${own} the add-in (${calls}), ${spills} several cells.`,
    ...keptLines(report),
    ...uncalculatedLines(report),
    ...differingLines(report),
    ...errorLines(report, all),
    ...faultLines(report),
  ];
}
