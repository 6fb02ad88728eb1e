import type { CellLike, FormulaResultLike } from "@cj-tech-master/excelts/formula";
import { type CellValue, isErrorCell } from "../../host/cellValues";
import type { TablePlace } from "./referenceWorld";

/**
 * How the result of a formula fills the sheet: one cell, a spill, the fixed range of an older array formula, or
 * the values of a what-if data table, which is never calculated.
 */
export type FormulaKind = "ordinary" | "dynamic" | "array" | "data table";

/** A formula of the workbook and its present result. */
export interface StoredFormula {
  /** Its number, which also identifies the calls it makes. */
  readonly site: number;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** As it is in the workbook. */
  readonly text: string;
  readonly kind: FormulaKind;
  /** The number of the group of cells that share the formula in the file. */
  readonly group?: string | undefined;
  /** The array range or the spill in the file. */
  readonly reference: string | undefined;
  /** Whether the file has a value for it. */
  readonly hasValue: boolean;
  /** As the library calculates it. */
  calculationText: string;
  /** The number of passes that calculated it. */
  answers: number;
  /** Whether the present pass calculates it. */
  active: boolean;
  /** The number of rows and columns that its result fills. */
  height: number;
  width: number;
}

interface Rectangle {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** The last row of a sheet, which limits a spill. */
export const LAST_ROW = 1_048_576;
/** The last column of a sheet, which limits a spill. */
export const LAST_COLUMN = 16_384;

const BLANK = 0;
const LITERAL = 2;
const FORMULA = 6;

/**
 * A cell as the calculating library reads it. A formula that the present pass does not calculate is read as its last value, so that a
 * large workbook can be calculated in several passes.
 */
export class StoredCell implements CellLike {
  constructor(
    readonly row: number,
    readonly col: number,
    public content: CellValue,
    readonly ownFormula?: StoredFormula,
    readonly arrayMaster?: StoredFormula
  ) {}

  get type(): number {
    if ((this.ownFormula ?? this.arrayMaster)?.active === true) return FORMULA;
    return this.content === null ? BLANK : LITERAL;
  }

  // The library reads this only for cells of the formula type, and "" means none.
  get formula(): string {
    return this.ownFormula?.active === true ? this.ownFormula.calculationText : "";
  }

  get model(): CellLike["model"] {
    if (this.ownFormula === undefined) return {};
    const { kind, reference } = this.ownFormula;
    if (kind === "dynamic") return { isDynamicArray: true };
    return kind === "array" && reference !== undefined
      ? { shareType: "array", ref: reference }
      : {};
  }

  get value(): unknown {
    return this.content;
  }

  set value(value: unknown) {
    this.content = toContent(value);
  }

  // Undefined before a formula is calculated: otherwise the library would keep an old value where it does not know a name.
  get result(): FormulaResultLike {
    if (this.ownFormula?.active === true || this.content === null) return undefined;
    return this.content;
  }

  set result(value: FormulaResultLike) {
    this.content = toContent(value);
    if (this.ownFormula !== undefined) this.ownFormula.answers += 1;
  }
}

function toContent(value: unknown): CellValue {
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") {
    return value;
  }
  return isErrorCell(value) ? { error: value.error } : null;
}

/** The cells of one sheet, by row and column. */
export class SheetStore {
  readonly rows = new Map<number, Map<number, StoredCell>>();
  readonly hiddenRows = new Set<number>();
  readonly mergedRegions: Rectangle[] = [];
  #bottom = 0;
  #right = 0;

  constructor(
    readonly id: number,
    readonly name: string,
    readonly tables: readonly TablePlace[]
  ) {}

  /** The cell at a place, if there is one. */
  find(row: number, column: number): StoredCell | undefined {
    return this.rows.get(row)?.get(column);
  }

  /** Puts a cell at its place. */
  put(cell: StoredCell): StoredCell {
    let row = this.rows.get(cell.row);
    if (row === undefined) {
      row = new Map();
      this.rows.set(cell.row, row);
    }
    row.set(cell.col, cell);
    this.#bottom = Math.max(this.#bottom, cell.row);
    this.#right = Math.max(this.#right, cell.col);
    return cell;
  }

  /** The range in use; null for an empty sheet. */
  get dimensions(): Rectangle | null {
    if (this.#bottom === 0) return null;
    return { top: 1, left: 1, bottom: this.#bottom, right: this.#right };
  }
}
