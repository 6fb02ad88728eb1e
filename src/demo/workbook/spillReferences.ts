import { cellAddress, columnNumber } from "../../host/cellAddress";
import type { SheetStore } from "./sheetStore";

const STORED_SPILL_REFERENCE =
  /(?:_xlfn\.)?ANCHORARRAY\(\s*(?:('(?:[^']|'')+'|[\p{L}\p{N}_.]+)!)?\$?([A-Z]{1,3})\$?(\d+)\s*\)/giu;

/** Whether a formula refers to the whole of a spill, which a file stores as ANCHORARRAY. */
export function refersToSpill(text: string): boolean {
  return text.toUpperCase().includes("ANCHORARRAY(");
}

/** The formula with each reference to a whole spill replaced by the block that the spill fills now. */
export function withSpillBlocks(
  text: string,
  home: string,
  sheets: ReadonlyMap<string, SheetStore>
): string {
  return text.replace(
    STORED_SPILL_REFERENCE,
    (whole: string, quoted: string | undefined, letters: string, digits: string) => {
      const sheetName = quoted?.replace(/^'|'$/g, "").replaceAll("''", "'") ?? home;
      const row = Number(digits);
      const column = columnNumber(letters);
      const formula = sheets.get(sheetName.toLowerCase())?.find(row, column)?.ownFormula;
      if (formula === undefined) return whole;
      const corner = cellAddress(row + formula.height - 1, column + formula.width - 1);
      const prefix = quoted === undefined ? "" : `${quoted}!`;
      return `${prefix}${cellAddress(row, column)}:${corner}`;
    }
  );
}
