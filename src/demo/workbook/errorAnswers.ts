import { cellAddress } from "../../host/cellAddress";
import { type CellValue, isErrorCell } from "../../host/cellValues";
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
    const found: ErrorAnswer[] = [];
    const sheet = this.#sheets.get(formula.sheet);
    for (let down = 0; down < formula.height; down += 1) {
      for (let across = 0; across < formula.width; across += 1) {
        const cell = sheet?.find(formula.row + down, formula.column + across);
        if (cell !== undefined && isErrorCell(cell.content)) {
          found.push(this.#explain(formula, cell, cell.content.error));
        }
      }
    }
    return found;
  }

  #explain(formula: StoredFormula, cell: StoredCell, error: string): ErrorAnswer {
    const place = { sheet: formula.sheet, row: cell.row, column: cell.col };
    if (error === "#SPILL!") {
      return {
        ...place,
        error,
        sentence: this.#blockedSentence(formula),
        takenFrom: undefined,
      };
    }
    const sentence = this.#said(formula, cell, error);
    const takenFrom = sentence === "" ? this.#origin(formula, place, error) : undefined;
    return { ...place, error, sentence, takenFrom };
  }

  #said(formula: StoredFormula, cell: StoredCell, error: string): string {
    const down = cell.row - formula.row;
    const across = cell.col - formula.column;
    const calls = this.sources.bridge.calls.get(formula.site) ?? [];
    const cells = calls.flatMap((call) => [
      call.rows[down]?.[across],
      ...(formula.height * formula.width === 1 ? call.rows.flat() : []),
    ]);
    const match = cells.find((answer) => answer?.error === error && answer.message !== undefined);
    return match?.message ?? "";
  }

  #origin(formula: StoredFormula, own: CellPlace, error: string): CellPlace | undefined {
    for (const area of this.sources.analysed[formula.site]?.references.areas ?? []) {
      const sheet = this.#sheets.get(area.sheet);
      for (const [row, cells] of sheet?.rows ?? []) {
        if (row < area.top || row > area.bottom) continue;
        for (const [column, cell] of cells) {
          if (column < area.left || column > area.right) continue;
          const isOwn = area.sheet === own.sheet && row === own.row && column === own.column;
          if (!isOwn && hasError(cell.content, error)) return { sheet: area.sheet, row, column };
        }
      }
    }
    return undefined;
  }

  #blockedSentence(formula: StoredFormula): string {
    const rows = this.sources.bridge.calls.get(formula.site)?.at(-1)?.rows;
    const sheet = this.#sheets.get(formula.sheet);
    for (let down = 0; down < (rows?.length ?? 0); down += 1) {
      for (let across = 0; across < (rows?.[0]?.length ?? 0); across += 1) {
        const cell = sheet?.find(formula.row + down, formula.column + across);
        if (cell !== undefined && cell.ownFormula !== formula && cell.content !== null) {
          const size = `${rows?.length ?? 0} rows by ${rows?.[0]?.length ?? 0} columns`;
          return `The result fills ${size}, but ${cellAddress(cell.row, cell.col)} is not empty.`;
        }
      }
    }
    return "The cells that the result would fill are not empty.";
  }
}

function hasError(content: CellValue, error: string): boolean {
  return isErrorCell(content) && content.error === error;
}
