import { refuseChangedCell } from "../../addin/workbook/entryCell";
import { laterOnce } from "../../addin/laterOnce";
import { NotDone, type WorkbookHost } from "../../addin/workbook/workbookHost";
import { readAddress } from "../../host/cellAddress";
import type { Grid } from "./grid";
import { cellAt, openWorkbook } from "./gridCells";

type Given<Name extends "enterValue" | "goTo" | "markCells"> = Parameters<
  NonNullable<WorkbookHost[Name]>
>;

function sheetNamed(grid: Grid, name: string) {
  const sheet = openWorkbook(grid).getSheetByName(name);
  if (!sheet) throw new NotDone(`The workbook has no sheet ${name} any more.`);
  return sheet;
}

/** Row and column of an address, counted from 0. */
function placeOf(address: string): readonly [row: number, column: number] {
  const { top = 1, left = 1 } = readAddress(address) ?? {};
  return [top - 1, left - 1];
}

/** Enters a value in one cell, if the cell still has the content that was read before. */
export function enterValue(grid: Grid, ...[place, value, format]: Given<"enterValue">): void {
  const { address, was } = place;
  const sheet = sheetNamed(grid, place.sheet);
  const [row, column] = placeOf(address);
  const cell = cellAt(grid, { sheetId: sheet.getSheetId(), row, column });
  refuseChangedCell(address, cell.value, was, cell.formula !== "");
  const range = sheet.getRange(row, column);
  const hasFormat = (range.getCellStyleData()?.n?.pattern ?? "") !== "";
  range.setValue({
    v: value,
    ...(format === "" || hasFormat ? {} : { s: { n: { pattern: format } } }),
  });
}

/** Selects a cell and shows its sheet. */
export function goTo(grid: Grid, ...[cell]: Given<"goTo">): void {
  const sheet = sheetNamed(grid, cell.sheet);
  const [row, column] = placeOf(cell.address);
  openWorkbook(grid).setActiveSheet(sheet);
  sheet.getRange(row, column).activate();
  const seen = sheet.getVisibleRange();
  const isSeen =
    seen &&
    row >= seen.startRow &&
    row < seen.endRow &&
    column >= seen.startColumn &&
    column < seen.endColumn;
  // A row and a column before the cell stay in sight.
  if (!isSeen) sheet.scrollToCell(Math.max(0, row - 1), Math.max(0, column - 1));
}

/** Tells of a new selection and of changes, but not while a cell is edited: reading the list would slow typing. */
export function followSelection(grid: Grid, moved: () => void): () => void {
  const { again, end } = laterOnce(() => {
    if (openWorkbook(grid).isCellEditing()) again();
    else moved();
  });
  const { api } = grid;
  const { SelectionChanged, SelectionMoveEnd, ActiveSheetChanged, SheetValueChanged } = api.Event;
  // A click at once after another sheet is shown ends a move without a change being told.
  const events = [SelectionChanged, SelectionMoveEnd, ActiveSheetChanged, SheetValueChanged];
  const added = events.map((event) => api.addEvent(event, again));
  return () => {
    end();
    for (const one of added) one.dispose();
  };
}

/** Marks cells of a sheet instead of those marked before. */
export function markCells(grid: Grid, ...[name, addresses]: Given<"markCells">): void {
  const sheet = sheetNamed(grid, name);
  grid.marks.set(sheet.getSheetId(), addresses.map(placeOf));
  sheet.refreshCanvas();
}
