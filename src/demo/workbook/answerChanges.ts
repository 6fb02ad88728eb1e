import { cellAddress, readAddress } from "../../host/cellAddress";
import { fileSpelling } from "./fileSpelling";
import type { AnsweredCall } from "./functionBridge";
import { type CellChange, fileValue } from "./cellChange";
import type { SheetChanges } from "./patchedSheet";
import type { Recalculation } from "./recalculation";
import { unshare } from "./sharedFormula";
import type { SheetStore, StoredFormula } from "./sheetStore";

/** A call that is the whole formula sets the number formats of the cells; a nested call cannot. */
function wholeCall(
  { site }: StoredFormula,
  recalculation: Recalculation
): AnsweredCall | undefined {
  const tree = recalculation.analysed[site]?.tree;
  const isOwn = tree?.type === 9 && recalculation.names.find(tree.name) !== undefined;
  return isOwn ? recalculation.bridge.calls.get(site)?.at(-1) : undefined;
}

class SheetAnswers {
  readonly changes: SheetChanges = new Map();

  constructor(
    readonly store: SheetStore,
    readonly recalculation: Recalculation
  ) {}

  put(row: number, column: number, change: CellChange): void {
    const cells = this.changes.get(row) ?? new Map<number, CellChange>();
    this.changes.set(row, cells.set(column, { ...cells.get(column), ...change }));
  }

  addFormula(formula: StoredFormula): void {
    const { row, column, kind } = formula;
    const old = readAddress(formula.reference ?? "");
    if (old !== undefined && kind === "dynamic") this.#clear(old, formula);
    const call = wholeCall(formula, this.recalculation);
    const array = kind === "array" ? old : undefined;
    const height = array === undefined ? formula.height : array.bottom - row + 1;
    const width = array === undefined ? formula.width : array.right - column + 1;
    for (let down = 0; down < height; down += 1) {
      for (let across = 0; across < width; across += 1) {
        const isFirst = down === 0 && across === 0;
        const content = this.store.find(row + down, column + across)?.content ?? null;
        const format = call?.rows[down]?.[across]?.numberFormat;
        this.put(row + down, column + across, {
          value: content === null && !isFirst ? null : fileValue(content),
          ...(format === undefined ? {} : { format }),
          ...(isFirst ? this.#formulaChange(formula) : {}),
        });
      }
    }
  }

  #formulaChange(formula: StoredFormula): CellChange {
    const { row, column, kind, text, height, width } = formula;
    const spelled = fileSpelling(text, this.recalculation.names);
    const spills = height > 1 || width > 1;
    const first = cellAddress(row, column);
    const last = cellAddress(row + height - 1, column + width - 1);
    const dynamicRange = spills ? `${first}:${last}` : first;
    if (kind === "dynamic" || (kind === "ordinary" && spills)) {
      const isSame = dynamicRange === formula.reference && spelled === text;
      return isSame ? {} : { formula: spelled, dynamicRange };
    }
    return kind === "ordinary" && spelled !== text ? { formula: spelled } : {};
  }

  #clear(old: NonNullable<ReturnType<typeof readAddress>>, formula: StoredFormula): void {
    for (let row = old.top; row <= old.bottom; row += 1) {
      for (let column = old.left; column <= old.right; column += 1) {
        const cell = this.store.find(row, column);
        const isOwn = row === formula.row && column === formula.column;
        const isEmpty = cell?.ownFormula === undefined && (cell?.content ?? null) === null;
        if (!isOwn && isEmpty) this.put(row, column, { value: null });
      }
    }
  }
}

/** The cells of a file that a recalculation changes, by the name of their sheet. */
export function answerChanges(recalculation: Recalculation): Map<string, SheetChanges> {
  const { loaded, calculated } = recalculation;
  return new Map(
    loaded.sheets.map((store) => {
      const answers = new SheetAnswers(store, recalculation);
      const formulas = loaded.formulas.filter(({ sheet }) => sheet === store.name);
      for (const formula of formulas) if (calculated.has(formula.site)) answers.addFormula(formula);
      unshare(answers.changes, formulas, recalculation.names);
      return [store.name, answers.changes] as const;
    })
  );
}
