import { Workbook } from "@cj-tech-master/excelts";
import { createFormulaSyntaxProbe } from "@cj-tech-master/excelts/formula";
import type { IWorkbookData } from "@univerjs/core";
import type { OwnFunctionNames } from "../workbook/ownFunctionNames";
import type { GridContent } from "./gridContent";
import { addFileNames } from "./gridNames";
import { writeCells } from "./writeCells";
import { writeShape } from "./writeShape";

/** A workbook that was opened, and the data of the grid that were made from it. */
export interface OpenedWorkbook {
  readonly workbook: Workbook;
  readonly snapshot: IWorkbookData;
}

/**
 * Whether every sheet that was opened still exists under its name.
 *
 * @param opened - The grid's data as they were opened.
 * @param present - The grid's data.
 */
function keepsSheets(opened: IWorkbookData, present: IWorkbookData): boolean {
  return opened.sheetOrder.every((id) => {
    const name = present.sheets[id]?.name;
    return present.sheetOrder.includes(id) && name === opened.sheets[id]?.name;
  });
}

/**
 * The content of the grid as a workbook to save.
 *
 * @param content - The content of the grid.
 * @param names - The names of our functions.
 * @param opened - The workbook that was opened, if no cells have moved. It keeps what the grid does not show. Without it, the workbook is new.
 * @returns The workbook that was opened, with the changes, or a new one.
 */
export function contentWorkbook(
  content: GridContent,
  names: OwnFunctionNames,
  opened?: OpenedWorkbook
): Workbook {
  const kept = opened && keepsSheets(opened.snapshot, content.snapshot) ? opened : undefined;
  const workbook =
    kept?.workbook ?? new Workbook({ formulaSyntaxProbe: createFormulaSyntaxProbe() });
  for (const written of content.sheets) {
    const name = written.data.name ?? written.id;
    const before = kept?.snapshot.sheets[written.id];
    const sheet = workbook.getWorksheet(name) ?? workbook.addWorksheet(name);
    writeShape(sheet, written.data, before ?? {});
    writeCells(sheet, written, before && kept?.snapshot, names);
  }
  if (!kept) addFileNames(content.snapshot, workbook, names);
  return workbook;
}
