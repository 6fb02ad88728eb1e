import { InterceptorEffectEnum, type Injector } from "@univerjs/core";
import {
  FormulaDataModel,
  INTERCEPTOR_POINT,
  SheetInterceptorService,
} from "@univerjs/preset-sheets-core";

/** After the grid has put the value of a spill into a cell, and before it formats numbers. */
const BEFORE_FORMATS = 99;

/**
 * Shows the number formats of results that fill several cells: the grid itself keeps only that of the first cell. The format of a cell
 * comes first.
 *
 * @param injector - The services of the grid, once a workbook is open.
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
