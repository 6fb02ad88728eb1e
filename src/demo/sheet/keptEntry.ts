import type { Injector } from "@univerjs/core";
import { IEditorBridgeService } from "@univerjs/preset-sheets-core";

/**
 * Keeps what is being typed when results arrive. The grid otherwise reads the edited cell again when a cell of the same row and column
 * changes, on any sheet, and what was typed so far is lost.
 *
 * @param injector - The services of the grid, once the first workbook is open.
 */
export function keepEntry(injector: Injector): void {
  const editor = injector.get(IEditorBridgeService);
  const readAgain = editor.refreshEditCellState.bind(editor);
  Object.assign(editor, {
    refreshEditCellState: () => {
      if (!editor.isVisible().visible) readAgain();
    },
  });
}
