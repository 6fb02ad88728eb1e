import type { DefinedNamesLike } from "@cj-tech-master/excelts/formula";
import { joined } from "../../host/formulaPieces";
import { EngineFormula } from "./engineFormula";
import { formulaText, type FormulaNode, parseFormula } from "./formulaTree";
import type { OwnFunctionNames } from "./ownFunctionNames";
import type { LoadedWorkbook } from "./readWorkbook";
import type { ReferenceWorld } from "./referenceWorld";

/** Marks calls made through a defined name, which belong to no particular cell. */
const NAME_SITE = -1;

/** The sheets, tables and names of a workbook, as analysis and calculation read them. */
export interface CalculationWorld extends ReferenceWorld {
  readonly names: OwnFunctionNames;
  /** The names for the calculating library. */
  readonly definedNames: DefinedNamesLike;
}

/** Reads the defined names, and writes them as the calculation needs them. */
export function calculationWorld(
  loaded: LoadedWorkbook,
  names: OwnFunctionNames
): CalculationWorld {
  const sheets = loaded.sheets.map(({ name }) => name);
  const entries = loaded.definedNames.map((entry) => ({
    ...entry,
    trees: entry.ranges.flatMap((text) => parseFormula(joined(names.pieces(text))) ?? []),
  }));
  const forEngine: ReturnType<DefinedNamesLike["getAllEntries"]> = [];
  const world: CalculationWorld = {
    sheets,
    tables: loaded.sheets.flatMap((sheet) => sheet.tables),
    names,
    definedName(name, sheet) {
      const found = entries.filter((entry) => entry.name.toUpperCase() === name.toUpperCase());
      const own = sheets.findIndex((each) => each.toLowerCase() === sheet.toLowerCase());
      const entry =
        found.find(({ localSheetId }) => localSheetId === own) ??
        found.find(({ localSheetId }) => localSheetId === undefined);
      return entry?.trees;
    },
    definedNames: { getAllEntries: () => forEngine, getAllNames: () => forEngine },
  };
  for (const entry of entries) {
    const place = { sheet: sheets[entry.localSheetId ?? -1] ?? "", row: 1, column: 1 };
    const engineFormula = new EngineFormula(NAME_SITE, place, true, world);
    const written = (tree: FormulaNode): string => formulaText(engineFormula.of(tree));
    const { trees, ranges, ...named } = entry;
    const isRead = trees.length === ranges.length;
    forEngine.push({ ...named, ranges: isRead ? trees.map(written) : [...ranges] });
  }
  return world;
}

const BLOCKS = /^(?:(?:'(?:[^']|'')*'|[^'!,()"]+)!)?\$?[A-Z]*\$?\d*(?::\$?[A-Z]*\$?\d*)?$/i;

/** The blocks of a name that refers to several of them; otherwise its whole text. */
export function rangesOfName(text: string): string[] {
  const pieces = text.match(/(?:'(?:[^']|'')*'|[^',])+/g) ?? [];
  return pieces.length > 1 && pieces.every((piece) => BLOCKS.test(piece)) ? pieces : [text];
}
