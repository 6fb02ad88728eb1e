import type { ICellData, IStyleData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import { cellAddress } from "../../host/cellAddress";
import type { CellValue } from "../../host/cellValues";
import { type CellChange, fileValue } from "../workbook/cellChange";
import { fileSpelling } from "../workbook/fileSpelling";
import type { OwnFunctionNames } from "../workbook/ownFunctionNames";
import type { SheetChanges } from "../workbook/patchedSheet";
import type { LoadedWorkbook } from "../workbook/readWorkbook";
import type { SheetStore, StoredFormula } from "../workbook/sheetStore";
import { unshare } from "../workbook/sharedFormula";
import { type GridContent, styleOf, valueOf, type WrittenCell } from "./gridContent";
import { hasSameNames } from "./gridNames";

/** The changes of cells that were made in the grid, by the name of their sheet. */
export interface GridChanges {
  readonly changes: Map<string, SheetChanges>;
  /** Whether a cell got its first formula or lost its formula. */
  readonly formulasChange: boolean;
}

const STYLE_KEYS = [
  "bl",
  "it",
  "ul",
  "st",
  "fs",
  "ff",
  "cl",
  "ht",
  "vt",
  "tb",
  "bd",
  "bg",
] as const;
const SAME_RESULT = 1e-9;

const same = (first: unknown, second: unknown): boolean =>
  JSON.stringify(first) === JSON.stringify(second);

function hasOtherLook(style: IStyleData, before: IStyleData): boolean {
  return STYLE_KEYS.some((key) => !same(style[key], before[key]));
}

function hasOtherShape(data: Partial<IWorksheetData>, opened: Partial<IWorksheetData>): boolean {
  const sizes = (lines: object | undefined, size: "w" | "h"): Map<string, readonly number[]> =>
    new Map(
      Object.entries((lines ?? {}) as Record<string, { w?: number; h?: number; hd?: number }>).map(
        ([key, line]) => [key, [line[size] ?? -1, line.hd ?? 0]]
      )
    );
  const differ = (now: Map<string, readonly number[]>, then: Map<string, readonly number[]>) =>
    [...now].some(([key, [size = -1, hidden = 0]]) => {
      const [sizeBefore = -1, hiddenBefore = 0] = then.get(key) ?? [];
      return (size !== -1 && size !== sizeBefore) || hidden !== hiddenBefore;
    });
  const { xSplit = 0, ySplit = 0 } = data.freeze ?? {};
  return (
    differ(sizes(data.columnData, "w"), sizes(opened.columnData, "w")) ||
    differ(sizes(data.rowData, "h"), sizes(opened.rowData, "h")) ||
    !same(data.mergeData ?? [], opened.mergeData ?? []) ||
    xSplit !== (opened.freeze?.xSplit ?? 0) ||
    ySplit !== (opened.freeze?.ySplit ?? 0)
  );
}

function isSameResult(first: CellValue, second: CellValue): boolean {
  if (typeof first !== "number" || typeof second !== "number") return same(first, second);
  // The grid and the file may have calculated the same result in another order.
  return Math.abs(first - second) <= SAME_RESULT * Math.max(1, Math.abs(second));
}

class SheetComparison {
  readonly changes: SheetChanges = new Map();
  formulasChange = false;
  hasOtherLook = false;

  constructor(
    readonly opened: IWorkbookData,
    readonly before: Partial<IWorksheetData>,
    readonly store: SheetStore | undefined,
    readonly names: OwnFunctionNames
  ) {}

  cell(written: WrittenCell): void {
    const { row, column, formula, value, style = {} } = written;
    const old = this.before.cellData?.[row]?.[column];
    const lookBefore = styleOf(old, this.opened) ?? {};
    if (hasOtherLook(style, lookBefore)) this.hasOtherLook = true;
    // Without a format, or with an empty one, the grid shows a number as it is.
    const isFormat = !same(style.n, lookBefore.n) && style.n !== undefined;
    const format: CellChange = isFormat
      ? { format: style.n?.pattern || "General", replacesFormat: true }
      : {};
    const present = this.store?.find(row + 1, column + 1);
    const stored = present?.ownFormula;
    if (formula === undefined) {
      // A cell that a formula fills has no value of its own when the file is opened.
      const isTyped = old?.f !== undefined || !same(valueOf(old, false), value);
      const isFilled = old?.v === undefined && isSameResult(value, present?.content ?? null);
      if (old?.f !== undefined) this.#put(row, column, { ...format, value, formula: null });
      else if (isTyped && !isFilled) this.#put(row, column, { ...format, value });
      else if (isFormat) this.#put(row, column, format);
      if (old?.f !== undefined) this.formulasChange = true;
      return;
    }
    const change = {
      ...format,
      ...this.#formulaChange(written, formula, old?.f ?? undefined, stored),
    };
    const isSame = value === null || isSameResult(fileValue(value), present?.content ?? null);
    if (!isSame) change.value = fileValue(value);
    if (Object.keys(change).length > 0) this.#put(row, column, change);
  }

  /** Cells that were emptied. */
  emptied(written: readonly WrittenCell[]): void {
    const kept = new Set(written.map(({ row, column }) => `${String(row)},${String(column)}`));
    for (const [row, cells] of Object.entries(this.before.cellData ?? {})) {
      for (const [column, cell] of Object.entries(cells as Record<string, ICellData>)) {
        const isContent = cell.f !== undefined || cell.v !== undefined;
        if (!isContent || kept.has(`${row},${column}`)) continue;
        this.#put(Number(row), Number(column), { value: null, formula: null });
        if (cell.f !== undefined) this.formulasChange = true;
      }
    }
  }

  #formulaChange(
    { row, column, block }: WrittenCell,
    formula: string,
    before: string | undefined,
    stored: StoredFormula | undefined
  ): { -readonly [Key in keyof CellChange]: CellChange[Key] } {
    const spelled = fileSpelling(formula, this.names);
    const isTyped = before !== `=${formula}`;
    if (isTyped && stored === undefined) this.formulasChange = true;
    const first = cellAddress(row + 1, column + 1);
    const spills =
      block !== undefined && (block.endRow > block.startRow || block.endColumn > block.startColumn);
    const range = spills ? `${first}:${cellAddress(block.endRow + 1, block.endColumn + 1)}` : first;
    const isDynamic = stored?.kind === "dynamic" || spills;
    if (!isTyped && stored?.kind === "array") return {};
    if (isTyped ? spelled !== formula || spills : isDynamic && stored?.reference !== range)
      return { formula: isTyped ? spelled : (stored?.text ?? spelled), dynamicRange: range };
    return isTyped ? { formula: spelled } : {};
  }

  #put(row: number, column: number, change: CellChange): void {
    const cells = this.changes.get(row + 1) ?? new Map<number, CellChange>();
    this.changes.set(row + 1, cells.set(column + 1, change));
  }
}

/**
 * What was changed in the grid, as far as it can be put into the file that was opened: values, formulas and number formats of cells.
 *
 * @param content - The content of the grid.
 * @param opened - The data of the grid as they were opened.
 * @param loaded - The content of the file.
 * @param names - The names of our functions.
 * @returns The changes; undefined if something else was changed, such as a style, a size or the list of sheets.
 */
export function gridChanges(
  content: GridContent,
  opened: IWorkbookData,
  loaded: LoadedWorkbook,
  names: OwnFunctionNames
): GridChanges | undefined {
  if (!same(content.snapshot.sheetOrder, opened.sheetOrder)) return undefined;
  if (!hasSameNames(content.snapshot, opened)) return undefined;
  const changes = new Map<string, SheetChanges>();
  let formulasChange = false;
  for (const { id, data, cells } of content.sheets) {
    const before = opened.sheets[id] ?? {};
    const { name = "" } = data;
    if (name !== before.name || (data.hidden ?? 0) !== (before.hidden ?? 0)) return undefined;
    if (hasOtherShape(data, before)) return undefined;
    const store = loaded.sheets.find((sheet) => sheet.name === name);
    const comparison = new SheetComparison(opened, before, store, names);
    for (const cell of cells) comparison.cell(cell);
    if (comparison.hasOtherLook) return undefined;
    comparison.emptied(cells);
    unshare(
      comparison.changes,
      loaded.formulas.filter(({ sheet }) => sheet === name),
      names
    );
    changes.set(name, comparison.changes);
    formulasChange ||= comparison.formulasChange;
  }
  return { changes, formulasChange };
}
