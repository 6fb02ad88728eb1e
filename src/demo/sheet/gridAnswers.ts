import type { AnsweredCall } from "../workbook/functionBridge";

/** A cell of the grid, rows and columns counted from 0. */
export interface GridPlace {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

interface Noted {
  readonly round: number;
  readonly calls: AnsweredCall[];
}

function keyOf({ sheetId, row, column }: GridPlace): string {
  return `${sheetId}!${row},${column}`;
}

/** The results of our functions by the cell whose formula called them. The grid keeps error codes, but not their messages. */
export class GridAnswers {
  readonly #noted = new Map<string, Noted>();
  #round = 0;

  /** Begins a new calculation, whose results replace the earlier ones of a cell. */
  begin(): void {
    this.#round += 1;
  }

  /** Records a call by the formula of a cell, with its result. */
  note(place: GridPlace, call: AnsweredCall): void {
    const key = keyOf(place);
    const noted = this.#noted.get(key);
    if (noted?.round === this.#round) noted.calls.push(call);
    else this.#noted.set(key, { round: this.#round, calls: [call] });
  }

  /** The calls by the formula of a cell in its last calculation, in order. */
  callsOf(place: GridPlace): readonly AnsweredCall[] {
    return this.#noted.get(keyOf(place))?.calls ?? [];
  }

  /** Deletes all results when another workbook is opened. */
  clear(): void {
    this.#noted.clear();
  }
}
