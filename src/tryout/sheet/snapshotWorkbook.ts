import { type CellFormulaValue, Workbook } from "@cj-tech-master/excelts";
import { createFormulaSyntaxProbe } from "@cj-tech-master/excelts/formula";
import { CellValueType, type ICellData, type IStyleData, type IWorkbookData } from "@univerjs/core";
import { giveLook } from "./cellLook";

const PIXELS_OF_A_CHARACTER = 7;
const PIXELS_OF_PADDING = 5;
const DEFINED_NAMES = "SHEET_DEFINED_NAME_PLUGIN";

/** Formulas filled down share one text with the cell they were filled from; that cell's identifier and the way from it. */
export type FormulaOf = (sheetId: string, row: number, column: number) => string;

function contentOf(
  cell: ICellData,
  formula: string
): string | number | boolean | CellFormulaValue | null {
  if (formula !== "") return { formula: formula.replace(/^=/, "") } as CellFormulaValue;
  const { v, t } = cell;
  if (v === undefined || v === null) return null;
  return t === CellValueType.BOOLEAN ? v === 1 || v === true : v;
}

/**
 * The grid's data as a workbook to be written to a file. Answers are left out: they are calculated before it is written.
 *
 * @param snapshot - The grid's data.
 * @param formulaOf - The formula of a cell as shown, empty where it holds none.
 * @param isFilled - Whether a cell is filled by another cell's formula.
 * @returns The workbook.
 */
export function snapshotWorkbook(
  snapshot: IWorkbookData,
  formulaOf: FormulaOf,
  isFilled: (sheetId: string, row: number, column: number) => boolean
): Workbook {
  const workbook = new Workbook({ formulaSyntaxProbe: createFormulaSyntaxProbe() });
  for (const id of snapshot.sheetOrder) {
    const data = snapshot.sheets[id];
    if (!data) continue;
    const { xSplit = 0, ySplit = 0 } = data.freeze ?? {};
    const views = xSplit > 0 || ySplit > 0 ? [{ state: "frozen" as const, xSplit, ySplit }] : [];
    const sheet = workbook.addWorksheet(data.name ?? id, { views });
    for (const [rowKey, row] of Object.entries(data.cellData ?? {})) {
      for (const [columnKey, content] of Object.entries(row as Record<string, ICellData>)) {
        const place = [Number(rowKey), Number(columnKey)] as const;
        const cell = sheet.getCell(place[0] + 1, place[1] + 1);
        if (!isFilled(id, ...place)) cell.value = contentOf(content, formulaOf(id, ...place));
        const { s } = content;
        giveLook(cell, (typeof s === "string" ? snapshot.styles[s] : s) as IStyleData | undefined);
      }
    }
    for (const [column, { w }] of Object.entries(data.columnData ?? {}) as [
      string,
      { w?: number },
    ][])
      if (w !== undefined)
        sheet.getColumn(Number(column) + 1).width = (w - PIXELS_OF_PADDING) / PIXELS_OF_A_CHARACTER;
    for (const { startRow, startColumn, endRow, endColumn } of data.mergeData ?? [])
      sheet.mergeCells(startRow + 1, startColumn + 1, endRow + 1, endColumn + 1);
  }
  const resource = snapshot.resources?.find(({ name }) => name === DEFINED_NAMES);
  const defined = JSON.parse(resource?.data || "{}") as Record<
    string,
    { name: string; formulaOrRefString: string }
  >;
  for (const { name, formulaOrRefString } of Object.values(defined))
    workbook.definedNames.add(formulaOrRefString, name);
  return workbook;
}
