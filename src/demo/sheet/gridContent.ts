import {
  CellValueType,
  type ICellData,
  type IRange,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
} from "@univerjs/core";
import type { CellValue } from "../../host/cellValues";
import { isErrorCode } from "./errorSentence";
import type { Grid } from "./grid";
import { filledBlocks, openWorkbook } from "./gridCells";

/** A cell of the grid to write to a file; its row and column are counted from 0. */
export interface WrittenCell {
  readonly row: number;
  readonly column: number;
  readonly value: CellValue;
  /** Without the equals sign; undefined if the cell has no formula. */
  readonly formula?: string | undefined;
  readonly style?: IStyleData | undefined;
  /** The cells that its formula fills; undefined if it fills only this one. */
  readonly block?: IRange | undefined;
}

/** A sheet of the grid to write to a file. */
export interface WrittenSheet {
  readonly id: string;
  readonly data: Partial<IWorksheetData>;
  readonly cells: readonly WrittenCell[];
}

/** The content of the grid to write to a file. */
export interface GridContent {
  readonly snapshot: IWorkbookData;
  readonly sheets: readonly WrittenSheet[];
}

type Cells = Readonly<Record<string, Readonly<Record<string, ICellData | null>>>>;

/**
 * The value of a cell in the data of the grid.
 *
 * @param cell - The cell.
 * @param isAnswer - Whether a formula filled it. Only then is the text of an error code an error.
 * @returns Its value.
 */
export function valueOf(cell: ICellData | null | undefined, isAnswer: boolean): CellValue {
  const value = cell?.v ?? documentText(cell) ?? null;
  if (value === null) return null;
  if (isAnswer && isErrorCode(value)) return { error: value };
  return cell?.t === CellValueType.BOOLEAN ? Boolean(value) : value;
}

/** The text of a cell that the grid keeps as a document, as it does for the answer of HYPERLINK; undefined for any other cell. */
function documentText(cell: ICellData | null | undefined): string | undefined {
  return cell?.p?.body?.dataStream.replace(/\r?\n?$/, "");
}

/** The style of a cell in the data of the grid, which may be in the cell or in the list of styles. */
export function styleOf(
  cell: ICellData | null | undefined,
  snapshot: IWorkbookData
): IStyleData | undefined {
  const style = typeof cell?.s === "string" ? snapshot.styles[cell.s] : cell?.s;
  return style || undefined;
}

function writtenCells(grid: Grid, snapshot: IWorkbookData, id: string): WrittenCell[] {
  const unit = snapshot.id;
  const blocks = new Map(
    filledBlocks(grid, id).map(({ place, block }) => [`${place.row},${place.column}`, block])
  );
  const found = new Map<string, WrittenCell>();
  const own = (snapshot.sheets[id]?.cellData ?? {}) as Cells;
  for (const [rowKey, cells] of Object.entries(own)) {
    for (const [columnKey, cell] of Object.entries(cells)) {
      const [row, column, key] = [Number(rowKey), Number(columnKey), `${rowKey},${columnKey}`];
      const text = grid.formulas.getFormulaStringByCell(row, column, id, unit) || undefined;
      const formula = text?.replace(/^=/, "");
      const value = valueOf(cell, text !== undefined);
      const block = text === undefined || value === null ? undefined : blocks.get(key);
      found.set(key, { row, column, value, formula, style: styleOf(cell, snapshot), block });
    }
  }
  const spilled = (grid.formulas.getArrayFormulaCellData()[unit]?.[id] ?? {}) as Cells;
  for (const [rowKey, cells] of Object.entries(spilled)) {
    for (const [columnKey, cell] of Object.entries(cells)) {
      const key = `${rowKey},${columnKey}`;
      const present = found.get(key);
      if (present && (present.formula !== undefined || present.value !== null)) continue;
      const style = { ...styleOf(cell, snapshot), ...present?.style };
      const place = { row: Number(rowKey), column: Number(columnKey) };
      found.set(key, { ...place, value: valueOf(cell, true), style });
    }
  }
  return [...found.values()];
}

/**
 * Reads the content of the grid, including results.
 *
 * @param grid - The grid.
 * @returns The sheets with their cells.
 */
export function gridContent(grid: Grid): GridContent {
  const snapshot = openWorkbook(grid).save();
  const sheets = snapshot.sheetOrder.map((id) => ({
    id,
    data: snapshot.sheets[id] ?? {},
    cells: writtenCells(grid, snapshot, id),
  }));
  return { snapshot, sheets };
}
