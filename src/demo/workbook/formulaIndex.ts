import type { Area } from "./referenceWorld";

/** A cell that a formula fills. */
export interface FormulaPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly site: number;
}

/** Finds the formulas of a block without reading every cell of the block. */
export class FormulaIndex {
  readonly #bySheet = new Map<string, Map<number, { row: number; site: number }[]>>();

  constructor(cells: Iterable<FormulaPlace>) {
    for (const { sheet, column, row, site } of cells) {
      const columns =
        this.#bySheet.get(sheet) ?? new Map<number, { row: number; site: number }[]>();
      this.#bySheet.set(sheet, columns);
      const entries = columns.get(column) ?? [];
      columns.set(column, entries);
      entries.push({ row, site });
    }
    for (const columns of this.#bySheet.values()) {
      for (const entries of columns.values()) entries.sort((a, b) => a.row - b.row);
    }
  }

  /** The numbers of the formulas inside an area. */
  *within(area: Area): Generator<number> {
    const columns = this.#bySheet.get(area.sheet);
    if (columns === undefined) return;
    for (const [column, entries] of columns) {
      if (column < area.left || column > area.right) continue;
      for (let at = firstFrom(entries, area.top); at < entries.length; at += 1) {
        const entry = entries[at];
        if (entry === undefined || entry.row > area.bottom) break;
        yield entry.site;
      }
    }
  }
}

function firstFrom(entries: readonly { row: number }[], row: number): number {
  let low = 0;
  let high = entries.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((entries[middle]?.row ?? 0) < row) low = middle + 1;
    else high = middle;
  }
  return low;
}
