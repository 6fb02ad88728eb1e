import { SaxParser, type SaxTag } from "@cj-tech-master/excelts/xml";
import { readAddress } from "../../host/cellAddress";
import { LAST_COLUMN, LAST_ROW } from "./sheetStore";
import {
  type PackageParts,
  partText,
  relations,
  relationsPart,
  UnreadablePart,
  workbookPart,
} from "./workbookPackage";

/** The most cells of all sheets of a workbook. */
const MOST_CELLS = 500_000;
/** The most cells of all merged cells and array formulas. */
const MOST_CELLS_OF_BLOCKS = 100_000;
/** The most cells of all defined names: a few whole columns. */
const MOST_CELLS_OF_NAMES = 5_000_000;

/** Thrown for a workbook that is too large. The message is the end of a sentence that begins with the name of the file. */
export class BeyondBounds extends Error {}

const BLOCK = /\$?[A-Z]{1,3}\$?\d+:\$?[A-Z]{1,3}\$?\d+/gi;
const CHARACTERS_AT_A_TIME = 65_536;
const BEYOND_SHEET = "has cells beyond the last row or column of a sheet";
const mostTaken = (what: string, count: number): BeyondBounds =>
  new BeyondBounds(`${what} more than ${count.toLocaleString("en-US")} cells, which is the limit`);

function cellsOf(reference: string): number {
  const block = readAddress(reference);
  if (!block) return 0;
  const { top, left, bottom, right } = block;
  return (Math.abs(bottom - top) + 1) * (Math.abs(right - left) + 1);
}

function isBeyondSheet(reference: string): boolean {
  const block = readAddress(reference);
  if (!block) return false;
  const { top, left, bottom, right } = block;
  return Math.max(top, bottom) > LAST_ROW || Math.max(left, right) > LAST_COLUMN;
}

class SheetBounds {
  #cells = 0;
  #blockCells = 0;
  #tableCells = 0;
  #nameCells = 0;
  #row = 0;
  #isName = false;

  check(text: string): void {
    this.#row = 0;
    const parser = new SaxParser({ position: false, invalidCharHandling: "skip" });
    let found: BeyondBounds | undefined;
    parser.on("opentag", (tag) => {
      found ??= this.#faultOf(tag);
    });
    parser.on("text", (words) => {
      found ??= this.#faultOfName(words);
    });
    try {
      for (let at = 0; at < text.length && !found; at += CHARACTERS_AT_A_TIME)
        parser.write(text.slice(at, at + CHARACTERS_AT_A_TIME));
      if (!found) parser.close();
    } catch (error) {
      throw new UnreadablePart(`could not be read as a workbook: ${(error as Error).message}`);
    }
    if (found) throw found;
  }

  #faultOf({ name, attributes }: SaxTag): BeyondBounds | undefined {
    const { r = "", ref = "", max, t } = attributes;
    this.#isName = false;
    switch (name.replace(/^.*:/, "")) {
      case "row":
        this.#row = r === "" ? this.#row + 1 : Number(r);
        return this.#row > LAST_ROW ? new BeyondBounds(BEYOND_SHEET) : undefined;
      case "c":
        this.#cells += 1;
        if (this.#cells > MOST_CELLS) return mostTaken("has", MOST_CELLS);
        return isBeyondSheet(r) ? new BeyondBounds(BEYOND_SHEET) : undefined;
      case "col":
        return Number(max) > LAST_COLUMN ? new BeyondBounds(BEYOND_SHEET) : undefined;
      case "f":
        return t === "array" ? this.#faultOfBlock(ref) : undefined;
      case "mergeCell":
        return this.#faultOfBlock(ref);
      case "table":
        this.#tableCells += cellsOf(ref);
        return this.#tableCells > MOST_CELLS ? mostTaken("has tables of", MOST_CELLS) : undefined;
      case "definedName":
        this.#isName = !/^_xlnm\.Print_/i.test(attributes["name"] ?? "");
        return undefined;
      default:
        return undefined;
    }
  }

  #faultOfBlock(reference: string): BeyondBounds | undefined {
    this.#blockCells += cellsOf(reference);
    return this.#blockCells > MOST_CELLS_OF_BLOCKS
      ? mostTaken("has merged cells or array formulas over", MOST_CELLS_OF_BLOCKS)
      : undefined;
  }

  #faultOfName(words: string): BeyondBounds | undefined {
    if (!this.#isName) return undefined;
    for (const [block] of words.matchAll(BLOCK)) this.#nameCells += cellsOf(block);
    return this.#nameCells > MOST_CELLS_OF_NAMES
      ? mostTaken("has names for", MOST_CELLS_OF_NAMES)
      : undefined;
  }
}

const READ_PARTS = ["worksheet", "sharedStrings", "styles", "sheetMetadata"];

/**
 * Rejects a workbook whose sheets, tables or names are larger than a sheet can be, or than the limits of this demo, and one whose parts
 * are not well-formed XML. Only the parts that a calculation reads or changes are checked.
 *
 * @param parts - The parts of a workbook by name.
 * @throws BeyondBounds for the first part that is too large.
 * @throws UnreadablePart for the first part that is damaged.
 */
export function refuseBeyondBounds(parts: PackageParts): void {
  const bounds = new SheetBounds();
  const check = (part: string): void => {
    if (parts.has(part)) bounds.check(partText(parts, part));
  };
  check(relationsPart(""));
  check("[Content_Types].xml");
  const workbook = workbookPart(parts);
  check(workbook);
  check(relationsPart(workbook));
  for (const { kind, part = "" } of relations(parts, workbook)) {
    if (!READ_PARTS.includes(kind)) continue;
    check(part);
    check(relationsPart(part));
    for (const table of relations(parts, part)) if (table.kind === "table") check(table.part ?? "");
  }
}
