import { InterceptorEffectEnum, type Injector } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/preset-sheets-core";

const MARK_COLOR = "#FFC7CE";
/** After the grid has put the values of spills into the cells. */
const AFTER_VALUES = 98;

/** Marked cells by sheet. A mark is only shown: it is no part of the workbook, and the fill of the user stays as it is. */
export class CellMarks {
  readonly #marked = new Map<string, ReadonlySet<string>>();

  /** Marks cells of a sheet, by row and column counted from 0, instead of those marked before. */
  set(sheetId: string, places: readonly (readonly [row: number, column: number])[]): void {
    this.#marked.set(sheetId, new Set(places.map(String)));
  }

  /** Whether a cell is marked. */
  has(sheetId: string, row: number, column: number): boolean {
    return this.#marked.get(sheetId)?.has(`${row},${column}`) ?? false;
  }

  /** Takes all marks away when another workbook is opened. */
  clear(): void {
    this.#marked.clear();
  }
}

/**
 * Shows marked cells with another color behind them.
 *
 * @param injector - The services of the grid, once a workbook is open.
 * @param marks - The marked cells.
 */
export function showMarks(injector: Injector, marks: CellMarks): void {
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: AFTER_VALUES,
    effect: InterceptorEffectEnum.Style,
    handler: (cell, location, next) => {
      const { subUnitId, row, col, workbook, rawData } = location;
      if (!marks.has(subUnitId, row, col)) return next(cell);
      const shown = cell ?? rawData;
      const style = shown ? workbook.getStyles().getStyleByCell(shown) : undefined;
      return next({ ...shown, s: { ...style, bg: { rgb: MARK_COLOR } } });
    },
  });
}
