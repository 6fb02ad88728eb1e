import {
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import {
  getViewportByCell,
  type IRender,
  IRenderManagerService,
  ISheetSelectionRenderService,
  SHEET_VIEWPORT_KEY,
  SheetsSelectionsService,
  type Viewport,
} from "@univerjs/preset-sheets-core";

function placeIn(injector: Injector, render: IRender): void {
  const books = injector.get(IUniverInstanceService);
  const selections = injector.get(SheetsSelectionsService);
  const ofSelectedCell = (): Viewport | undefined => {
    const sheet = books.getUnit<Workbook>(render.unitId)?.getActiveSheet();
    const cell = selections.getCurrentLastSelection()?.primary;
    return (
      (sheet &&
        cell &&
        getViewportByCell(cell.actualRow, cell.actualColumn, render.scene, sheet)) ??
      render.scene.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN)
    );
  };
  Object.assign(render.with(ISheetSelectionRenderService), { getViewPort: ofSelectedCell });
}

/**
 * Opens the editor of a cell at the cell. The grid itself places it by how far that part of the sheet is scrolled where the mouse was
 * pressed last. After a click on a frozen column and arrow keys to a column that is scrolled into view, the editor then has no width,
 * and of what is typed only the first character reaches the cell.
 *
 * @param injector - The services of the grid, once the first workbook is open and before it is drawn.
 */
export function placeEditorAtCell(injector: Injector): void {
  injector.get(IRenderManagerService).created$.subscribe((render) => {
    if (render.type === UniverInstanceType.UNIVER_SHEET) placeIn(injector, render);
  });
}
