import { readAddress } from "../../host/cellAddress";
import { cellContent, isTrue } from "./cellContent";
import { rangesOfName } from "./definedNames";
import { dynamicArrayMarks } from "./dynamicArrayMark";
import { fileSpelling } from "./fileSpelling";
import type { OwnFunctionNames } from "./ownFunctionNames";
import { sharedFormula } from "./sharedFormula";
import { type CellPart, sheetData, sheetRows } from "./sheetPart";
import { sheetTables } from "./sheetTables";
import { type FormulaKind, SheetStore, StoredCell, type StoredFormula } from "./sheetStore";
import {
  listedSheets,
  type PackageParts,
  partText,
  sharedTexts,
  UnreadablePart,
  workbookPart,
} from "./workbookPackage";
import { attribute, firstElement, plainText, xmlElements } from "./xmlText";

/** A defined name of the workbook; without a sheet it is valid on all of them. */
export interface NameEntry {
  readonly name: string;
  readonly ranges: readonly string[];
  readonly localSheetId?: number;
}

/** The content of a workbook as the calculation needs it. */
export interface LoadedWorkbook {
  readonly sheets: readonly SheetStore[];
  readonly formulas: readonly StoredFormula[];
  readonly definedNames: readonly NameEntry[];
  readonly calculation: {
    readonly fullCalcOnLoad: boolean;
    readonly iterate: boolean;
    readonly iterateCount: number;
    readonly iterateDelta: number;
  };
}

// eslint-disable-next-line no-control-regex
const SHEET_NAME = /^[^\u0000-\u001f[\]:*?/\\]+$/;

class WorkbookReader {
  readonly formulas: StoredFormula[] = [];
  readonly #shared: readonly string[];
  readonly #dynamicMarks: ReadonlySet<string>;

  constructor(
    readonly parts: PackageParts,
    readonly workbook: string,
    readonly names: OwnFunctionNames
  ) {
    this.#shared = sharedTexts(parts, workbook);
    this.#dynamicMarks = dynamicArrayMarks(parts, workbook);
  }

  sheet(id: number, name: string, part: string): SheetStore {
    const store = new SheetStore(id, name, sheetTables(this.parts, part, name));
    const text = partText(this.parts, part);
    const data = sheetData(text);
    if (data === undefined)
      throw new UnreadablePart(`could not be read as a workbook: ${part} has no rows`);
    for (const { tag } of xmlElements(text.slice(data.end), "mergeCell")) {
      const region = readAddress(attribute(tag, "ref") ?? "");
      if (region !== undefined) store.mergedRegions.push(region);
    }
    const masters = new Map<string, { text: string; cell: CellPart }>();
    for (const { row, element, cells } of sheetRows(data)) {
      if (isTrue(attribute(element.tag, "hidden"))) store.hiddenRows.add(row);
      for (const cell of cells) this.#cell(store, cell, masters);
    }
    return store;
  }

  #cell(
    store: SheetStore,
    cell: CellPart,
    masters: Map<string, { text: string; cell: CellPart }>
  ): void {
    const { row, column, formula, value } = cell;
    if (!(row > 0 && column > 0))
      throw new UnreadablePart(
        `could not be read as a workbook: a cell of ${store.name} has no address`
      );
    const content = cellContent(cell, this.#shared);
    if (content === undefined && value !== undefined && plainText(value.inside) !== "")
      throw new UnreadablePart(
        `is damaged: the content of ${store.name}!${attribute(cell.element.tag, "r") ?? ""} cannot be read`
      );
    if (formula === undefined) {
      if (content !== undefined) store.put(new StoredCell(row, column, content));
      return;
    }
    const type = attribute(formula.tag, "t");
    const group = attribute(formula.tag, "si") ?? "";
    let text = plainText(formula.inside);
    if (type === "shared") {
      const master = masters.get(group);
      if (text !== "") masters.set(group, { text, cell });
      else if (master !== undefined)
        text = sharedFormula(master.text, row - master.cell.row, column - master.cell.column);
    }
    const reference = type === "array" ? (attribute(formula.tag, "ref") ?? undefined) : undefined;
    const block = readAddress(reference ?? "");
    const stored: StoredFormula = {
      site: this.formulas.length,
      sheet: store.name,
      row,
      column,
      text,
      kind: this.#kind(cell, type, text),
      group: type === "shared" ? group : undefined,
      reference,
      hasValue: content !== undefined,
      calculationText: text,
      answers: 0,
      active: false,
      height: block === undefined ? 1 : block.bottom - row + 1,
      width: block === undefined ? 1 : block.right - column + 1,
    };
    this.formulas.push(stored);
    store.put(new StoredCell(row, column, content ?? null, stored));
  }

  #kind({ element }: CellPart, type: string | undefined, text: string): FormulaKind {
    if (type === "dataTable") return "data table";
    if (type === "array")
      return this.#dynamicMarks.has(attribute(element.tag, "cm") ?? "") ? "dynamic" : "array";
    // No file that Excel saved has this spelling, so the formula counts as newly typed.
    return fileSpelling(text, this.names) === text ? "ordinary" : "dynamic";
  }
}

/** The cells that an older array formula fills are calculated with it. */
function layOutArray(store: SheetStore, formula: StoredFormula): void {
  const block = readAddress(formula.kind === "array" ? (formula.reference ?? "") : "");
  if (block === undefined) return;
  for (let row = block.top; row <= block.bottom; row += 1) {
    for (let column = block.left; column <= block.right; column += 1) {
      const cell = store.find(row, column);
      if (cell?.ownFormula === undefined)
        store.put(new StoredCell(row, column, cell?.content ?? null, undefined, formula));
    }
  }
}

/**
 * Reads the sheets, formulas, tables and names of a workbook.
 *
 * @param parts - The parts of the file.
 * @param names - The names of our functions.
 * @returns What the calculation needs.
 * @throws UnreadablePart for parts that are no workbook.
 */
export function readWorkbook(parts: PackageParts, names: OwnFunctionNames): LoadedWorkbook {
  const workbook = workbookPart(parts);
  const text = partText(parts, workbook);
  const listed = listedSheets(parts, workbook);
  if (listed.length === 0) throw new UnreadablePart("has no sheet");
  const sheetNames = new Set(listed.map(({ name }) => name.toLowerCase()));
  if (sheetNames.size < listed.length || listed.some(({ name }) => !SHEET_NAME.test(name)))
    throw new UnreadablePart(
      "could not be read as a workbook: a sheet has no name of its own that a sheet can have"
    );
  if (isTrue(attribute(firstElement(text, "workbookPr")?.tag ?? "", "date1904")))
    throw new UnreadablePart(
      "uses the 1904 date system, in which the functions would read every date four years too early. Clear it in Excel (File, Options, Advanced), correct the dates, and save the workbook"
    );
  const withCells = listed.filter(({ hasCells }) => hasCells);
  const reader = new WorkbookReader(parts, workbook, names);
  const sheets = withCells.map(({ name, part }, index) => reader.sheet(index + 1, name, part));
  const stores = new Map(sheets.map((store) => [store.name, store]));
  for (const formula of reader.formulas) {
    const store = stores.get(formula.sheet);
    if (store !== undefined) layOutArray(store, formula);
  }
  const definedNames = [...xmlElements(text, "definedName")].map(({ tag, inside }): NameEntry => {
    const scope = attribute(tag, "localSheetId");
    const sheet = scope === undefined ? undefined : listed[Number(scope)];
    const ranges = rangesOfName(plainText(inside));
    const name = attribute(tag, "name") ?? "";
    return scope === undefined
      ? { name, ranges }
      : { name, ranges, localSheetId: sheet === undefined ? -1 : withCells.indexOf(sheet) };
  });
  const { tag = "" } = firstElement(text, "calcPr") ?? {};
  const calculation = {
    fullCalcOnLoad:
      isTrue(attribute(tag, "fullCalcOnLoad")) || attribute(tag, "calcCompleted") === "0",
    iterate: isTrue(attribute(tag, "iterate")),
    iterateCount: Number(attribute(tag, "iterateCount") ?? 100),
    iterateDelta: Number(attribute(tag, "iterateDelta") ?? 0.001),
  };
  return { sheets, formulas: reader.formulas, definedNames, calculation };
}
