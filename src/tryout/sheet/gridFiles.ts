import type { IWorkbookData } from "@univerjs/core";
import type { StandInHost } from "../host/standInHost";
import { OwnFunctionNames } from "../workbook/ownFunctionNames";
import { recalculateWorkbook } from "../workbook/workbook";
import { workbookOfBytes } from "../workbook/workbookBytes";
import type { Grid } from "./grid";
import { snapshotWorkbook } from "./snapshotWorkbook";
import { workbookSnapshot } from "./workbookSnapshot";

const KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/**
 * Reads a file from disk for the grid; nothing leaves the page.
 *
 * @param file - The file as the browser hands it over.
 * @param host - The stand-in host, for the names of our functions.
 * @returns The grid's data.
 * @throws NotAWorkbook in one sentence for a file that is none.
 */
export async function readForGrid(file: File, host: StandInHost): Promise<IWorkbookData> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const workbook = await workbookOfBytes(file.name, bytes);
  const names = new OwnFunctionNames(host.namespace, host.functions.keys());
  return workbookSnapshot(workbook, `${file.name} ${String(file.lastModified)}`, names);
}

/**
 * What is in the grid as an .xlsx file: every formula calculated once more, as the try-out without a browser does it, and written
 * with the names that Excel stores.
 *
 * @param grid - The grid.
 * @param host - The stand-in host.
 * @returns The file's content.
 */
export async function fileOfGrid(grid: Grid, host: StandInHost): Promise<Blob> {
  const open = grid.getActiveWorkbook();
  if (!open) throw new Error("No workbook is open.");
  const sheets = new Map(open.getSheets().map((sheet) => [sheet.getSheetId(), sheet]));
  const formulas = new Map(
    [...sheets].map(([id, sheet]) => {
      const range = sheet.getDataRange();
      return [id, range.getFormulas()] as const;
    })
  );
  const formulaOf = (id: string, row: number, column: number) =>
    formulas.get(id)?.[row]?.[column] ?? "";
  const isFilled = (): boolean => false;
  const workbook = snapshotWorkbook(open.save(), formulaOf, isFilled);
  const { bytes } = await recalculateWorkbook(workbook, host);
  return new Blob([bytes as BlobPart], { type: KIND });
}

/** Hands a file to the reader, as a download. */
export function download(content: Blob, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}
