import { columnNumber } from "../../host/cellAddress";
import { attribute, firstElement, type XmlElement, xmlElements } from "./xmlText";

/** A cell as the part of a sheet contains it. */
export interface CellPart {
  readonly row: number;
  readonly column: number;
  readonly element: XmlElement;
  /** The type of its value, such as `s` for a shared text. */
  readonly type: string;
  readonly formula: XmlElement | undefined;
  readonly value: XmlElement | undefined;
  readonly inlineText: XmlElement | undefined;
}

/** A row as the part of a sheet contains it. */
export interface RowPart {
  readonly row: number;
  readonly element: XmlElement;
  readonly cells: readonly CellPart[];
}

function cellPart(element: XmlElement, row: number, before: number): CellPart {
  const address = attribute(element.tag, "r");
  const children = new Map<string, XmlElement>();
  for (const child of xmlElements(element.inside, "f", "v", "is", "extLst"))
    children.set(child.name, child);
  return {
    row,
    column: address === undefined ? before + 1 : columnNumber(address.replace(/\d+$/, "")),
    element,
    type: attribute(element.tag, "t") ?? "n",
    formula: children.get("f"),
    value: children.get("v"),
    inlineText: children.get("is"),
  };
}

/** The element with the rows of a sheet. */
export function sheetData(text: string): XmlElement | undefined {
  return firstElement(text, "sheetData");
}

/** The rows of a sheet in the order of its part. A row or cell without an address follows the one before it. */
export function* sheetRows(data: XmlElement): Generator<RowPart> {
  let row = 0;
  for (const element of xmlElements(data.inside, "row")) {
    row = Number(attribute(element.tag, "r") ?? row + 1);
    const cells: CellPart[] = [];
    for (const cell of xmlElements(element.inside, "c"))
      cells.push(cellPart(cell, row, cells.at(-1)?.column ?? 0));
    yield { row, element, cells };
  }
}
