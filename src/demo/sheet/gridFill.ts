import { BooleanNumber, WrapStrategy, type ICellData } from "@univerjs/core";
import {
  filledAddress,
  fillPlan,
  LIST_CHANGED,
  refuseFilled,
  type PlannedColumn,
} from "../../addin/workbook/fillPlan";
import {
  NotDone,
  type FilledColumns,
  type FormulaColumn,
  type SelectedList,
} from "../../addin/workbook/workbookHost";
import type { Grid } from "./grid";
import { openWorkbook } from "./gridCells";
import { shownCells } from "./gridList";
import { pixelsOfWidth } from "./sheetSizes";

/** The library's command that changes columns. Its own method for widths takes one width for all columns of a change. */
const SET_COLUMNS = "sheet.command.set-col-data";

type Sheet = ReturnType<ReturnType<typeof openWorkbook>["getActiveSheet"]>;

/** The columns beside each other, which are written with one change. */
function runsOf(planned: readonly PlannedColumn[]): PlannedColumn[][] {
  const runs: PlannedColumn[][] = [];
  for (const one of planned.toSorted((first, other) => first.column - other.column)) {
    const last = runs.at(-1);
    const before = last?.at(-1);
    if (last && before?.column === one.column - 1 && before.isNew === one.isNew) last.push(one);
    else runs.push([one]);
  }
  return runs;
}

function cellOf(formula: string, { format, isNew }: PlannedColumn): ICellData {
  const style = isNew && format !== "" ? { s: { n: { pattern: format } } } : {};
  return { ...(formula === "" ? { v: null, f: null } : { f: formula, v: null }), ...style };
}

/** Writes columns that are beside each other, and returns how many changes that took. */
function writeRun(
  grid: Grid,
  sheet: Sheet,
  { headingRow, rows }: SelectedList,
  run: readonly PlannedColumn[]
): number {
  const first = (run[0]?.column ?? 1) - 1;
  const isNew = run[0]?.isNew ?? false;
  const heading = ({ heading: v }: PlannedColumn): ICellData => ({
    v,
    ...(isNew ? { s: { bl: BooleanNumber.TRUE, tb: WrapStrategy.WRAP } } : {}),
  });
  const cells = [
    run.map(heading),
    ...rows.map((_row, index) => run.map((one) => cellOf(one.formulas[index] ?? "", one))),
  ];
  let changes = 1;
  if (sheet.getMaxColumns() < first + run.length) {
    sheet.insertColumnsAfter(sheet.getMaxColumns() - 1, first + run.length - sheet.getMaxColumns());
    changes += 1;
  }
  const narrow = run
    .map(({ width }, index) => ({ column: first + index, w: pixelsOfWidth(width) }))
    .filter(({ column, w }) => sheet.getColumnWidth(column) < w);
  // The widths come first: by them the grid finds the height of a row whose headings are wrapped.
  if (isNew && narrow.length > 0) {
    grid.api.syncExecuteCommand(SET_COLUMNS, {
      unitId: openWorkbook(grid).getId(),
      subUnitId: sheet.getSheetId(),
      columnData: Object.fromEntries(narrow.map(({ column, w }) => [column, { w }])),
    });
    changes += 1;
  }
  sheet.getRange(headingRow - 1, first, cells.length, run.length).setValues(cells);
  return changes;
}

/**
 * Writes columns of formulas beside a list of the grid.
 *
 * @throws NotDone when something is in the way, or the list has changed.
 */
export function fillColumns(
  grid: Grid,
  list: SelectedList,
  columns: readonly FormulaColumn[]
): FilledColumns {
  const planned = fillPlan(list, columns);
  const sheet = openWorkbook(grid).getSheetByName(list.sheet);
  if (!sheet || sheet.getSheetId() !== openWorkbook(grid).getActiveSheet().getSheetId())
    throw new NotDone(LIST_CHANGED);
  const { values, formulas } = shownCells(grid);
  const left = list.firstColumn - 1;
  const right = left + list.headings.length;
  const at = (cells: readonly (readonly unknown[])[]): (readonly unknown[])[] =>
    cells.slice(list.headingRow - 1, list.headingRow + list.rows.length);
  const isSame = [list.headings, ...list.rows].every((line, row) =>
    line.every((cell, index) => {
      const isFormula = row > 0 && (list.formulas[row - 1]?.[index] ?? "") !== "";
      return isFormula || at(values)[row]?.[left + index] === cell;
    })
  );
  if (!isSame) throw new NotDone(LIST_CHANGED);
  const added = planned.filter(({ isNew }) => isNew).length;
  const beside = (cells: readonly (readonly unknown[])[]): (readonly unknown[])[] =>
    at(cells).map((line) => line.slice(right, right + added));
  refuseFilled(list, beside(values));
  refuseFilled(list, beside(formulas));
  const undoSteps = runsOf(planned).reduce((sum, run) => sum + writeRun(grid, sheet, list, run), 0);
  return { address: filledAddress(list, planned), updated: planned.length - added, undoSteps };
}
