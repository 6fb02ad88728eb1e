import type { DefinedNamesLike } from "@cj-tech-master/excelts/formula";
import { readAddress } from "../../host/cellAddress";
import { calculationText } from "./calculationText";
import type { OwnFunctionNames } from "./ownFunctionNames";
import type { LoadedWorkbook } from "./readWorkbook";

/** Marks calls made through a defined name, which belong to no particular cell. */
const NAME_SITE = -1;

/** The defined names of the workbook as the calculation reads them. */
export interface CalculationNames extends DefinedNamesLike {
  /** The texts that a name refers to from a sheet; undefined for an unknown name. */
  find(name: string, sheet: string): readonly string[] | undefined;
}

/** Reads the defined names and writes the calls of our functions in them as the calculation needs them. */
export function calculationNames(
  loaded: LoadedWorkbook,
  names: OwnFunctionNames
): CalculationNames {
  const sheets = loaded.sheets.map(({ name }) => name.toLowerCase());
  const entries = loaded.definedNames.map((entry) => ({
    ...entry,
    ranges: entry.ranges.map((text) => calculationText(text, NAME_SITE, names)),
  }));
  return {
    getAllEntries: () => entries,
    getAllNames: () => entries,
    find(name, sheet) {
      const candidates = entries.filter((entry) => entry.name.toUpperCase() === name.toUpperCase());
      const own = sheets.indexOf(sheet.toLowerCase());
      const entry =
        candidates.find(({ localSheetId }) => localSheetId === own) ??
        candidates.find(({ localSheetId }) => localSheetId === undefined);
      return entry?.ranges;
    },
  };
}

/** Whether a name's text is a block of more than one cell. */
export function isSeveralCells(texts: readonly string[]): boolean {
  if (texts.length > 1) return true;
  const address = (texts[0] ?? "").replace(/^.*!/, "");
  const block = readAddress(address);
  if (block === undefined) return /[:(]/.test(address);
  return block.top !== block.bottom || block.left !== block.right;
}

const BLOCKS = /^(?:(?:'(?:[^']|'')*'|[^'!,()"]+)!)?\$?[A-Z]*\$?\d*(?::\$?[A-Z]*\$?\d*)?$/i;

/** The blocks of a name that refers to several of them; otherwise its whole text. */
export function rangesOfName(text: string): string[] {
  const pieces = text.match(/(?:'(?:[^']|'')*'|[^',])+/g) ?? [];
  return pieces.length > 1 && pieces.every((piece) => BLOCKS.test(piece)) ? pieces : [text];
}
