import { columnLetters, columnNumber } from "../../host/cellAddress";
import { formulaPieces } from "../../host/formulaPieces";
import type { CellChange } from "./cellChange";
import { fileSpelling } from "./fileSpelling";
import type { OwnFunctionNames } from "./ownFunctionNames";
import type { SheetChanges } from "./patchedSheet";
import { LAST_COLUMN, LAST_ROW, type StoredFormula } from "./sheetStore";

const CELL = /^(\$?)([A-Z]{1,3})(\$?)(\d+)$/i;

function movedNumber(fixed: string, number: number, by: number, last: number): number {
  return fixed === "$" ? number : ((number + by - 1 + last) % last) + 1;
}

const movedColumn = (fixed: string, letters: string, by: number): string =>
  fixed + columnLetters(movedNumber(fixed, columnNumber(letters), by, LAST_COLUMN));
const movedRow = (fixed: string, row: string, by: number): string =>
  `${fixed}${movedNumber(fixed, Number(row), by, LAST_ROW)}`;

/** Moves references to whole columns or rows such as A:B or 1:2, which the pieces of a formula do not tell apart. */
function movedBlocks(text: string, down: number, across: number): string {
  return text
    .replace(
      /(?<![\w.$])(\$?)([A-Z]{1,3}):(\$?)([A-Z]{1,3})(?![\w.(!])/gi,
      (_all, first: string, left: string, second: string, right: string) =>
        `${movedColumn(first, left, across)}:${movedColumn(second, right, across)}`
    )
    .replace(
      /(?<![\w.$])(\$?)(\d+):(\$?)(\d+)(?![\w.(!])/g,
      (_all, first: string, top: string, second: string, bottom: string) =>
        `${movedRow(first, top, down)}:${movedRow(second, bottom, down)}`
    );
}

/** A formula that several cells share, as it is in a cell some rows below and some columns to the right of its first. */
export function sharedFormula(formula: string, down: number, across: number): string {
  let moved = "";
  let rest = "";
  const pieces = formulaPieces(formula);
  for (const [index, { kind, text }] of pieces.entries()) {
    const cell = kind === "other" && pieces[index + 1]?.text !== "!" ? CELL.exec(text) : null;
    if (cell !== null || kind === "quoted" || kind === "bracket") {
      moved += movedBlocks(rest, down, across);
      rest = "";
      const [, first = "", letters = "", second = "", row = ""] = cell ?? [];
      moved +=
        cell === null ? text : movedColumn(first, letters, across) + movedRow(second, row, down);
    } else rest += text;
  }
  return moved + movedBlocks(rest, down, across);
}

/** Cells of a shared formula of which one gets another formula are each given their own text. */
export function unshare(
  changes: SheetChanges,
  formulas: readonly StoredFormula[],
  names: OwnFunctionNames
): void {
  const isChanged = ({ row, column }: StoredFormula): boolean =>
    changes.get(row)?.get(column)?.formula !== undefined;
  const groups = new Set(formulas.filter(isChanged).map(({ group }) => group));
  for (const formula of formulas) {
    const { row, column, group, text } = formula;
    if (group === undefined || !groups.has(group) || isChanged(formula)) continue;
    const cells = changes.get(row) ?? new Map<number, CellChange>();
    const change = { ...cells.get(column), formula: fileSpelling(text, names) };
    changes.set(row, cells.set(column, change));
  }
}
