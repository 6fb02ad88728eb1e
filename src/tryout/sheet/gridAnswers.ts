import type { AnswerCell } from "../workbook/cellValues";

/** Where a formula of ours stands, and what it answered. */
interface Answered {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
  readonly rows: readonly (readonly AnswerCell[])[];
}

/** What our functions answered, by the cell of their formula: the grid keeps the error codes, but not their sentences. */
export class GridAnswers {
  readonly #byCell = new Map<string, Answered>();
  /** How many workbooks have been opened. */
  opened = 0;

  /** Notes what the formula of a cell answered, in the stead of what it answered before. */
  note(sheetId: string, row: number, column: number, rows: Answered["rows"]): void {
    this.#byCell.set(`${sheetId}!${String(row)},${String(column)}`, { sheetId, row, column, rows });
  }

  /** The answer that stands in a cell, its own formula's or one that filled it from elsewhere. */
  at(sheetId: string, row: number, column: number): AnswerCell | undefined {
    const own = this.#byCell.get(`${sheetId}!${String(row)},${String(column)}`);
    if (own) return own.rows[0]?.[0];
    for (const answered of this.#byCell.values()) {
      const down = row - answered.row;
      const across = column - answered.column;
      if (answered.sheetId !== sheetId || down < 0 || across < 0) continue;
      const cell = answered.rows[down]?.[across];
      if (cell) return cell;
    }
    return undefined;
  }

  /** Forgets everything, when another workbook is opened. */
  clear(): void {
    this.#byCell.clear();
    this.opened += 1;
  }
}
