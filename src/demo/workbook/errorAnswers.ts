import { cellAddress } from "../../host/cellAddress";
import { isErrorCell } from "../../host/cellValues";
import type { AnalysedFormula } from "./formulaAnalysis";
import type { FunctionBridge } from "./functionBridge";
import type { CellPlace, ErrorAnswer } from "./recalculationReport";
import type { SheetStore, StoredCell, StoredFormula } from "./sheetStore";

/** The input for explaining the errors of a workbook. */
export interface ErrorSources {
  readonly sheets: readonly SheetStore[];
  readonly formulas: readonly StoredFormula[];
  readonly analysed: readonly AnalysedFormula[];
  readonly bridge: FunctionBridge;
}

/** Finds every cell that shows an error, and the message for it. */
export class ErrorAnswers {
  readonly #sheets: ReadonlyMap<string, SheetStore>;

  constructor(readonly sources: ErrorSources) {
    this.#sheets = new Map(sources.sheets.map((sheet) => [sheet.name, sheet]));
  }

  /** The errors, sheet by sheet in reading order. */
  all(): ErrorAnswer[] {
    return this.sources.formulas.flatMap((formula) => this.#ofFormula(formula));
  }

  #ofFormula(formula: StoredFormula): ErrorAnswer[] {
    return this.#cellsOf(formula, formula.height, formula.width).flatMap((cell) =>
      isErrorCell(cell.content) ? [this.#explain(formula, cell, cell.content.error)] : []
    );
  }

  #cellsOf({ sheet, row, column }: StoredFormula, height: number, width: number): StoredCell[] {
    const store = this.#sheets.get(sheet);
    const found: StoredCell[] = [];
    for (let down = 0; down < height; down += 1)
      for (let across = 0; across < width; across += 1) {
        const cell = store?.find(row + down, column + across);
        if (cell !== undefined) found.push(cell);
      }
    return found;
  }

  #explain(formula: StoredFormula, cell: StoredCell, error: string): ErrorAnswer {
    const place = { sheet: formula.sheet, row: cell.row, column: cell.col };
    const isBlocked = error === "#SPILL!";
    const sentence = isBlocked ? this.#blockedSentence(formula) : this.#said(formula, cell, error);
    const takenFrom = sentence === "" ? this.#origin(formula, place, error) : undefined;
    return { ...place, error, sentence, takenFrom };
  }

  #said(formula: StoredFormula, cell: StoredCell, error: string): string {
    const calls = this.sources.bridge.calls.get(formula.site) ?? [];
    const cells = calls.flatMap((call) => [
      call.rows[cell.row - formula.row]?.[cell.col - formula.column],
      ...(formula.height * formula.width === 1 ? call.rows.flat() : []),
    ]);
    const match = cells.find((answer) => answer?.error === error && answer.message !== undefined);
    return match?.message ?? "";
  }

  #origin(formula: StoredFormula, own: CellPlace, error: string): CellPlace | undefined {
    for (const area of this.sources.analysed[formula.site]?.references.areas ?? []) {
      for (const [row, cells] of this.#sheets.get(area.sheet)?.rows ?? []) {
        if (row < area.top || row > area.bottom) continue;
        for (const [column, { content }] of cells) {
          if (column < area.left || column > area.right) continue;
          const isOwn = area.sheet === own.sheet && row === own.row && column === own.column;
          if (!isOwn && isErrorCell(content) && content.error === error)
            return { sheet: area.sheet, row, column };
        }
      }
    }
    return undefined;
  }

  #blockedSentence(formula: StoredFormula): string {
    const rows = this.sources.bridge.calls.get(formula.site)?.at(-1)?.rows ?? [];
    const [height, width] = [rows.length, rows[0]?.length ?? 0];
    const blocking = this.#cellsOf(formula, height, width).find(
      (cell) => cell.ownFormula !== formula && cell.content !== null
    );
    if (blocking === undefined) return "The cells that the result would fill are not empty.";
    const size = `${String(height)} rows by ${String(width)} columns`;
    return `The result fills ${size}, but ${cellAddress(blocking.row, blocking.col)} is not empty.`;
  }
}
