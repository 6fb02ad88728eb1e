import { InterceptorEffectEnum, type Injector } from "@univerjs/core";
import {
  FormulaDataModel,
  INTERCEPTOR_POINT,
  SheetInterceptorService,
} from "@univerjs/preset-sheets-core";

/** After the grid has put the filled value into a cell, and before it writes numbers in their format. */
const BEFORE_FORMATS = 99;

/**
 * Shows the number formats of answers that fill several cells: the grid itself keeps that of the first cell alone. A format of the cell's
 * own goes before.
 *
 * @param injector - Where the grid keeps its services, once a workbook is open.
 */
export function showFilledFormats(injector: Injector): void {
  const formulas = injector.get(FormulaDataModel);
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: BEFORE_FORMATS,
    effect: InterceptorEffectEnum.Value | InterceptorEffectEnum.Style,
    handler: (cell, location, next) => {
      const { unitId, subUnitId, row, col, workbook, rawData } = location;
      const filled = formulas.getArrayFormulaCellData()[unitId]?.[subUnitId]?.[row]?.[col];
      const styles = workbook.getStyles();
      const format = filled?.s ? styles.get(filled.s)?.n : undefined;
      const own = rawData?.s ? styles.get(rawData.s) : undefined;
      if (!format || own?.n || !cell) return next(cell);
      return next({ ...cell, s: { ...own, n: format } });
    },
  });
}
