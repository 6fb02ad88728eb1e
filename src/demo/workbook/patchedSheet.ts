import { cellAddress, readAddress } from "../../host/cellAddress";
import { type CellChange, holds, typeAndText } from "./cellChange";
import type { NumberFormats } from "./numberFormats";
import { type CellPart, type RowPart, sheetData, sheetRows } from "./sheetPart";
import {
  attribute,
  escaped,
  firstElement,
  withAttribute,
  type XmlElement,
  xmlElements,
} from "./xmlText";

/** Changes of the cells of a sheet, by row and column. */
export type SheetChanges = Map<number, Map<number, CellChange>>;

/** The parts of a workbook that changed cells may need. */
export interface SharedParts {
  readonly formats: NumberFormats;
  /** The metadata of the cell of a dynamic array, added to the file when first needed. */
  readonly dynamicMark: () => string;
}

class SheetPatch {
  readonly #columns: readonly string[];
  readonly #prefix: string;

  constructor(
    text: string,
    data: XmlElement,
    readonly shared: SharedParts
  ) {
    this.#prefix = data.prefix;
    const columns = firstElement(text.slice(0, data.start), "cols")?.inside ?? "";
    this.#columns = [...xmlElements(columns, "col")].map(({ tag }) => tag);
  }

  rows(data: XmlElement, changes: SheetChanges): string {
    const waiting = [...changes].sort(([a], [b]) => a - b);
    const made: string[] = [];
    let copied = 0;
    const addRows = (before: number): void => {
      while (waiting[0] !== undefined && waiting[0][0] < before) {
        const [row, cells] = waiting.shift() ?? [0, new Map<number, CellChange>()];
        const tag = `<${this.#prefix}row r="${String(row)}">`;
        const inside = this.#cells({ row, tag, inside: "", cells: [] }, cells);
        if (inside !== "") made.push(`${tag}${inside}</${this.#prefix}row>`);
      }
    };
    for (const { row, element, cells } of sheetRows(data)) {
      const { start, end, tag, inside, prefix } = element;
      made.push(data.inside.slice(copied, start));
      addRows(row);
      copied = end;
      const whole = data.inside.slice(start, end);
      const patched =
        waiting[0]?.[0] === row
          ? this.#cells({ row, tag, inside, cells }, waiting.shift()?.[1] ?? new Map())
          : inside;
      const open = withAttribute(tag, "spans", undefined).replace(/\s*\/?>$/, ">");
      made.push(patched === inside ? whole : `${open}${patched}</${prefix}row>`);
    }
    made.push(data.inside.slice(copied));
    addRows(Infinity);
    return made.join("");
  }

  #cells(
    { row, tag, inside, cells }: Pick<RowPart, "row" | "cells"> & { tag: string; inside: string },
    changes: ReadonlyMap<number, CellChange>
  ): string {
    const waiting = [...changes].sort(([a], [b]) => a - b);
    let made = "";
    let copied = 0;
    const addCells = (before: number): void => {
      while (waiting[0] !== undefined && waiting[0][0] < before) {
        const [column, change] = waiting.shift() ?? [0, {}];
        if ((change.value ?? null) === null && typeof change.formula !== "string") continue;
        const style = this.#styleOfNewCell(tag, column);
        const open = `<${this.#prefix}c r="${cellAddress(row, column)}"/>`;
        made += this.#cell(style === undefined ? open : withAttribute(open, "s", style), change);
      }
    };
    for (const cell of cells) {
      const { start, end } = cell.element;
      made += inside.slice(copied, start);
      addCells(cell.column);
      copied = end;
      const whole = inside.slice(start, end);
      const change = waiting[0]?.[0] === cell.column ? waiting.shift()?.[1] : undefined;
      const isSame = change === undefined || this.#isSame(cell, change);
      made += isSame ? whole : this.#cell(cell.element.tag, change, cell);
    }
    made += inside.slice(copied);
    addCells(Infinity);
    return made;
  }

  #styleOfNewCell(row: string, column: number): string | undefined {
    if (attribute(row, "customFormat") === "1") return attribute(row, "s");
    const found = this.#columns.find(
      (tag) => Number(attribute(tag, "min")) <= column && column <= Number(attribute(tag, "max"))
    );
    return found === undefined ? undefined : attribute(found, "style");
  }

  #isSame(
    cell: CellPart,
    { value, formula, dynamicRange, format, replacesFormat }: CellChange
  ): boolean {
    if (formula !== undefined || dynamicRange !== undefined) return false;
    const style = attribute(cell.element.tag, "s") ?? "0";
    if (
      format !== undefined &&
      this.shared.formats.withFormat(style, format, replacesFormat) !== style
    )
      return false;
    return value === undefined || holds(cell, value);
  }

  #cell(open: string, change: CellChange, cell?: CellPart): string {
    const { value, formula, dynamicRange, format, replacesFormat } = change;
    let tag = open;
    if (format !== undefined) {
      const old = attribute(tag, "s") ?? "0";
      const style = this.shared.formats.withFormat(old, format, replacesFormat);
      if (style !== old) tag = withAttribute(tag, "s", style);
    }
    const { inside = "" } = cell?.element ?? {};
    const piece = (element: XmlElement | undefined): string =>
      element === undefined ? "" : inside.slice(element.start, element.end);
    const f = `${this.#prefix}f`;
    let formulaPart = formula === null ? "" : piece(cell?.formula);
    if (dynamicRange !== undefined) {
      formulaPart = `<${f} t="array" ref="${dynamicRange}">${escaped(formula ?? "")}</${f}>`;
      if (attribute(tag, "cm") === undefined)
        tag = withAttribute(tag, "cm", this.shared.dynamicMark());
    } else if (typeof formula === "string") {
      tag = withAttribute(tag, "cm", undefined);
      formulaPart = `<${f}>${escaped(formula)}</${f}>`;
    }
    let valuePart = piece(cell?.value) + piece(cell?.inlineText);
    if (value !== undefined) {
      const [type, text] = value === null ? [undefined, undefined] : typeAndText(value);
      tag = withAttribute(tag, "t", type);
      // The metadata of a value tell what the old value was.
      tag = withAttribute(tag, "vm", undefined);
      const v = `${this.#prefix}v`;
      valuePart = text === undefined ? "" : `<${v}>${text}</${v}>`;
    }
    const content = formulaPart + valuePart;
    const start = tag.replace(/\s*\/?>$/, "");
    return content === "" ? `${start}/>` : `${start}>${content}</${this.#prefix}c>`;
  }
}

function withDimension(head: string, changes: SheetChanges): string {
  const dimension = firstElement(head, "dimension");
  const area = readAddress(attribute(dimension?.tag ?? "", "ref") ?? "");
  if (dimension === undefined || area === undefined) return head;
  let { bottom, right } = area;
  for (const [row, cells] of changes) {
    for (const [column, { value = null }] of cells) {
      if (value === null) continue;
      bottom = Math.max(bottom, row);
      right = Math.max(right, column);
    }
  }
  if (bottom === area.bottom && right === area.right) return head;
  const reference = `${cellAddress(area.top, area.left)}:${cellAddress(bottom, right)}`;
  const tag = withAttribute(dimension.tag, "ref", reference);
  return head.replace(dimension.tag, () => tag);
}

/**
 * Puts changes into the text of a sheet. What they do not concern stays character for character.
 *
 * @param text - The part of the sheet.
 * @param changes - The changes.
 * @param shared - The parts that changed cells may need.
 * @returns The changed text.
 */
export function patchedSheet(text: string, changes: SheetChanges, shared: SharedParts): string {
  const data = sheetData(text);
  if (data === undefined || changes.size === 0) return text;
  const rows = new SheetPatch(text, data, shared).rows(data, changes);
  if (rows === data.inside) return text;
  const open = data.tag.replace(/\s*\/>$/, ">");
  const head = withDimension(text.slice(0, data.start), changes);
  return `${head}${open}${rows}</${data.prefix}sheetData>${text.slice(data.end)}`;
}
