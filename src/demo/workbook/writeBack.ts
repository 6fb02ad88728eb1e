import type { Cell, CellFormulaValue, Workbook, Worksheet } from "@cj-tech-master/excelts";
import { cellAddress, readAddress } from "../../host/cellAddress";
import { type CellValue, isErrorCell } from "../../host/cellValues";
import { fileSpelling } from "./fileSpelling";
import type { AnsweredCall } from "./functionBridge";
import type { OwnFunctionNames } from "./ownFunctionNames";
import type { Recalculation } from "./recalculation";
import type { SheetStore, StoredFormula } from "./sheetStore";

/** Errors that a file stores as they are; Excel stores newer ones differently. */
const ERRORS_IN_FILES = ["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A"];

type FileValue = number | string | boolean | { error: "#VALUE!" };

/** A value as a file stores it; a formula that returns a blank cell shows 0. */
export function fileValue(content: CellValue): FileValue {
  if (content === null) return 0;
  if (!isErrorCell(content)) return content;
  const error = ERRORS_IN_FILES.includes(content.error) ? content.error : "#VALUE!";
  return { error: error as "#VALUE!" };
}

function setFormat(cell: Cell, format: string | undefined): void {
  if (format === undefined) return;
  const present = cell.numFmt;
  const isGeneral = present === undefined || present === "General";
  if (isGeneral) cell.numFmt = format;
}

/** A call that is the whole formula sets the number formats of the cells; a nested call cannot. */
function wholeCall(formula: StoredFormula, recalculation: Recalculation): AnsweredCall | undefined {
  const pieces = recalculation.names.pieces(formula.text).filter(({ kind }) => kind !== "space");
  const [first] = pieces;
  if (first?.kind !== "call" || recalculation.names.find(first.text) === undefined)
    return undefined;
  let depth = 0;
  for (const [index, piece] of pieces.entries()) {
    if (piece.text === "(") depth += 1;
    if (piece.text === ")") depth -= 1;
    if (index > 0 && depth === 0 && index < pieces.length - 1) return undefined;
  }
  return recalculation.bridge.calls.get(formula.site)?.at(-1);
}

function writeFormulaCell(
  cell: Cell,
  formula: StoredFormula,
  result: FileValue,
  names: OwnFunctionNames
): void {
  const text = fileSpelling(formula.text, names);
  const spills = formula.height > 1 || formula.width > 1;
  if (formula.kind === "dynamic" || (formula.kind === "ordinary" && spills)) {
    const last = cellAddress(formula.row + formula.height - 1, formula.column + formula.width - 1);
    const first = cellAddress(formula.row, formula.column);
    const ref = spills ? `${first}:${last}` : first;
    const value = {
      formula: text,
      result,
      shareType: "array",
      ref,
      isDynamicArray: true,
    };
    cell.value = value as CellFormulaValue;
  } else if (text === formula.text) {
    cell.result = result;
  } else {
    cell.value = { formula: text, result };
  }
}

function clearOldSpill(worksheet: Worksheet, store: SheetStore, formula: StoredFormula): void {
  const old = formula.reference === undefined ? undefined : readAddress(formula.reference);
  if (old === undefined || formula.kind !== "dynamic") return;
  for (let row = old.top; row <= old.bottom; row += 1) {
    for (let column = old.left; column <= old.right; column += 1) {
      const cell = store.find(row, column);
      if (cell?.ownFormula === undefined && (cell?.content ?? null) === null) {
        worksheet.getCell(row, column).value = null;
      }
    }
  }
}

function writeBlock(
  worksheet: Worksheet,
  store: SheetStore,
  formula: StoredFormula,
  call: AnsweredCall | undefined
): void {
  const array = formula.kind === "array" && formula.reference !== undefined;
  const block = array ? readAddress(formula.reference ?? "") : undefined;
  const height = block === undefined ? formula.height : block.bottom - block.top + 1;
  const width = block === undefined ? formula.width : block.right - block.left + 1;
  for (let down = 0; down < height; down += 1) {
    for (let across = 0; across < width; across += 1) {
      const cell = worksheet.getCell(formula.row + down, formula.column + across);
      if (down > 0 || across > 0) {
        const content = store.find(formula.row + down, formula.column + across)?.content ?? null;
        cell.value = content === null ? null : fileValue(content);
      }
      setFormat(cell, call?.rows[down]?.[across]?.numberFormat);
    }
  }
}

/** Writes every result to the workbook: values, spills, number formats and the spelling of files. */
export function writeBack(workbook: Workbook, recalculation: Recalculation): void {
  const { loaded, names, report } = recalculation;
  const kept = new Set(
    report.notCalculated.map(({ sheet, row, column }) => `${sheet}!${cellAddress(row, column)}`)
  );
  const stores = new Map(loaded.sheets.map((store) => [store.name, store]));
  for (const formula of loaded.formulas) {
    const worksheet = workbook.getWorksheet(formula.sheet);
    const store = stores.get(formula.sheet);
    if (worksheet === undefined || store === undefined) continue;
    const place = `${formula.sheet}!${cellAddress(formula.row, formula.column)}`;
    const wasAnswered = formula.answers > 0;
    if (kept.has(place) && !wasAnswered) continue;
    const content = store.find(formula.row, formula.column)?.content ?? null;
    clearOldSpill(worksheet, store, formula);
    writeFormulaCell(
      worksheet.getCell(formula.row, formula.column),
      formula,
      fileValue(content),
      names
    );
    writeBlock(worksheet, store, formula, wholeCall(formula, recalculation));
  }
}
