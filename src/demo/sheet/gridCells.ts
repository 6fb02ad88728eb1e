import type { CellValue as GridValue, IRange } from "@univerjs/core";
import type { Grid } from "./grid";
import type { GridPlace } from "./gridAnswers";

/** A cell as the grid shows it. */
export interface ShownCell {
  readonly value: GridValue | null;
  /** Its own formula with the equals sign; empty if it has none. */
  readonly formula: string;
  /** The cell whose formula fills it: itself, another one, or none. */
  readonly filledBy: GridPlace | undefined;
}

/** The open workbook of a grid. */
export function openWorkbook(grid: Grid) {
  const workbook = grid.api.getActiveWorkbook();
  if (!workbook) throw new Error("no workbook is open");
  return workbook;
}

/** The first of the selected cells; the first cell of the sheet when none is selected. */
export function selectedPlace(grid: Grid): GridPlace {
  const workbook = openWorkbook(grid);
  const sheetId = workbook.getActiveSheet().getSheetId();
  const { startRow = 0, startColumn = 0 } = workbook.getActiveCell()?.getRange() ?? {};
  return { sheetId, row: startRow, column: startColumn };
}

/** The blocks that the formulas of a sheet fill, by row and column of the formula. */
export function filledBlocks(
  grid: Grid,
  sheetId: string
): readonly { readonly place: GridPlace; readonly block: IRange }[] {
  const unit = grid.formulas.getArrayFormulaRange()[openWorkbook(grid).getId()];
  return Object.entries(unit?.[sheetId] ?? {}).flatMap(([row, columns]) =>
    Object.entries(columns as Readonly<Record<string, IRange>>).map(([column, block]) => ({
      place: { sheetId, row: Number(row), column: Number(column) },
      block,
    }))
  );
}

function holds({ startRow, endRow, startColumn, endColumn }: IRange, place: GridPlace): boolean {
  const isRow = place.row >= startRow && place.row <= endRow;
  return isRow && place.column >= startColumn && place.column <= endColumn;
}

/** A cell as the grid shows it, filled by its own formula or by another one. */
export function cellAt(grid: Grid, place: GridPlace): ShownCell {
  const { sheetId, row, column } = place;
  const workbook = openWorkbook(grid);
  const own = workbook.getWorkbook().getSheetBySheetId(sheetId)?.getCellRaw(row, column);
  const formula =
    grid.formulas.getFormulaStringByCell(row, column, sheetId, workbook.getId()) || "";
  if (formula !== "") return { value: own?.v ?? null, formula, filledBy: place };
  const spilled =
    grid.formulas.getArrayFormulaCellData()[workbook.getId()]?.[sheetId]?.[row]?.[column];
  const filledBy =
    own?.v === undefined || own.v === null
      ? filledBlocks(grid, sheetId).find(({ block }) => holds(block, place))?.place
      : undefined;
  return { value: own?.v ?? (filledBy && spilled?.v) ?? null, formula, filledBy };
}
