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

/** What our functions answered, by the cell whose formula called them: the grid keeps error codes, but not their sentences. */
export class GridAnswers {
  readonly #noted = new Map<string, Noted>();
  #round = 0;

  /** Begins a new calculation: what is noted from now on takes the place of what a cell's formula answered before. */
  begin(): void {
    this.#round += 1;
  }

  /** Notes an answered call of a cell's formula. */
  note(place: GridPlace, call: AnsweredCall): void {
    const key = keyOf(place);
    const noted = this.#noted.get(key);
    if (noted?.round === this.#round) noted.calls.push(call);
    else this.#noted.set(key, { round: this.#round, calls: [call] });
  }

  /** The calls of a cell's formula in its last calculation, in their order. */
  callsOf(place: GridPlace): readonly AnsweredCall[] {
    return this.#noted.get(keyOf(place))?.calls ?? [];
  }

  /** Forgets everything, when another workbook is opened. */
  clear(): void {
    this.#noted.clear();
  }
}
