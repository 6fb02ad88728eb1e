import { Workbook } from "@cj-tech-master/excelts";
import { createFormulaSyntaxProbe } from "@cj-tech-master/excelts/formula";
import type { IWorkbookData } from "@univerjs/core";
import type { OwnFunctionNames } from "../workbook/ownFunctionNames";
import type { GridContent } from "./gridContent";
import { addFileNames } from "./gridNames";
import { writeCells } from "./writeCells";
import { writeShape } from "./writeShape";

/** A workbook as it was opened, beside the grid's data made of it. */
export interface OpenedWorkbook {
  readonly workbook: Workbook;
  readonly snapshot: IWorkbookData;
}

/**
 * Whether every sheet that was opened is still there under its name.
 *
 * @param opened - The grid's data as they were opened.
 * @param present - The grid's data.
 */
export function keepsSheets(opened: IWorkbookData, present: IWorkbookData): boolean {
  return opened.sheetOrder.every((id) => {
    const name = present.sheets[id]?.name;
    return present.sheetOrder.includes(id) && name === opened.sheets[id]?.name;
  });
}

/**
 * What the grid holds as a workbook to be written to a file.
 *
 * @param content - What the grid holds.
 * @param names - The names of our functions.
 * @param opened - What was opened, when cells still stand where they stood: what the grid does not show is kept. Else a new workbook is made.
 * @returns The workbook; the one that was opened, changed, where there is one.
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
