import { type Cell, dateToExcel, type Workbook, type Worksheet } from "@cj-tech-master/excelts";
import { readAddress } from "../../host/cellAddress";
import type { CellValue } from "../../host/cellValues";
import { isErrorCell } from "../../host/cellValues";
import { fileSpelling } from "./fileSpelling";
import type { OwnFunctionNames } from "./ownFunctionNames";
import { type FormulaKind, SheetStore, StoredCell, type StoredFormula } from "./sheetStore";

/** A formula that the workbook library does not make available, so that it cannot be calculated. */
export interface UnreachableFormula {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** The cells of the workbook as the calculation needs them. */
export interface LoadedSheets {
  readonly sheets: readonly SheetStore[];
  readonly formulas: readonly StoredFormula[];
  readonly unreachable: readonly UnreachableFormula[];
}

interface CellFormulaModel {
  readonly formula?: string;
  readonly sharedFormula?: string;
  readonly shareType?: string;
  readonly ref?: string;
  readonly isDynamicArray?: boolean;
}

const MERGED = 1;
const HYPERLINK = 5;
const FORMULA = 6;

/** A value of the workbook library as a plain cell value: a date as its serial number, formatted text as plain text. */
export function plainValue(value: unknown): CellValue {
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") {
    return value;
  }
  if (value instanceof Date) return dateToExcel(value, false);
  if (isErrorCell(value)) return { error: value.error };
  if (typeof value !== "object" || value === null) return null;
  if ("richText" in value) {
    return (value.richText as { text: string }[]).map((run) => run.text).join("");
  }
  return "text" in value ? plainValue(value.text) : null;
}

function formulaKind(model: CellFormulaModel, text: string, names: OwnFunctionNames): FormulaKind {
  if (model.isDynamicArray === true) return "dynamic";
  if (model.shareType === "array") return "array";
  // No file that Excel saved has this spelling, so the formula counts as newly typed.
  return fileSpelling(text, names) === text ? "ordinary" : "dynamic";
}

class SheetsLoader {
  readonly formulas: StoredFormula[] = [];
  readonly unreachable: UnreachableFormula[] = [];

  constructor(readonly names: OwnFunctionNames) {}

  load(worksheet: Worksheet): SheetStore {
    const tables = worksheet.getTables() as readonly unknown[];
    const store = new SheetStore(worksheet.id, worksheet.name, tables);
    store.mergedRegions.push(...worksheet.mergedRegions);
    const first = this.formulas.length;
    worksheet.eachRow({ includeEmpty: true }, (row, rowNumber) => {
      if (row.hidden) store.hiddenRows.add(rowNumber);
      row.eachCell((cell) => {
        if (Number(cell.type) !== MERGED) this.#loadCell(store, cell);
      });
    });
    for (const formula of this.formulas.slice(first)) layOutBlock(store, formula);
    return store;
  }

  #loadCell(store: SheetStore, cell: Cell): void {
    const model = cell.model as CellFormulaModel;
    const { row, col } = cell;
    if (Number(cell.type) === FORMULA) {
      const formula = this.#formula(store, cell, model);
      store.put(new StoredCell(row, col, plainValue(cell.result), formula));
      return;
    }
    if (Number(cell.type) === HYPERLINK && model.formula !== undefined) {
      this.unreachable.push({
        sheet: store.name,
        row,
        column: col,
        text: model.formula,
      });
    }
    const content = plainValue(cell.value);
    if (content !== null) store.put(new StoredCell(row, col, content));
  }

  #formula(store: SheetStore, cell: Cell, model: CellFormulaModel): StoredFormula {
    const text = cell.formula ?? "";
    const formula: StoredFormula = {
      site: this.formulas.length,
      sheet: store.name,
      row: cell.row,
      column: cell.col,
      text,
      kind: formulaKind(model, text, this.names),
      reference: model.ref,
      calculationText: text,
      answers: 0,
      active: false,
      height: 1,
      width: 1,
    };
    this.formulas.push(formula);
    return formula;
  }
}

/**
 * Prepares the other cells that a formula fills. The cells of an older array formula are written with it, and the values of an earlier
 * spill are deleted before it spills again.
 */
function layOutBlock(store: SheetStore, formula: StoredFormula): void {
  const block = formula.reference === undefined ? undefined : readAddress(formula.reference);
  if (block === undefined || formula.kind === "ordinary") return;
  for (let row = block.top; row <= block.bottom; row += 1) {
    for (let column = block.left; column <= block.right; column += 1) {
      if (row === formula.row && column === formula.column) continue;
      const cell = store.find(row, column);
      if (cell?.ownFormula !== undefined) continue;
      if (formula.kind === "array") {
        store.put(new StoredCell(row, column, cell?.content ?? null, undefined, formula));
      } else if (cell !== undefined) {
        cell.content = null;
      }
    }
  }
}

/** Reads every cell of the workbook in the form that the calculation needs. */
export function loadSheets(workbook: Workbook, names: OwnFunctionNames): LoadedSheets {
  const loader = new SheetsLoader(names);
  const sheets = workbook.worksheets.map((worksheet) => loader.load(worksheet));
  return { sheets, formulas: loader.formulas, unreachable: loader.unreachable };
}
