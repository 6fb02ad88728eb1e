import type { Workbook } from "@cj-tech-master/excelts";
import type { DefinedNamesLike } from "@cj-tech-master/excelts/formula";
import { readAddress } from "../../host/cellAddress";
import { calculationText } from "./calculationText";
import type { TablePlace } from "./referenceWorld";
import type { OwnFunctionNames } from "./ownFunctionNames";

/** Marks calls made through a defined name, which belong to no particular cell. */
const NAME_SITE = -1;

/** The defined names of the workbook as the calculation reads them. */
export interface CalculationNames extends DefinedNamesLike {
  /** The texts that a name refers to from a sheet; undefined for an unknown name. */
  find(name: string, sheet: string): readonly string[] | undefined;
}

/** Reads the defined names and writes the calls of our functions in them as the calculation needs them. */
export function calculationNames(workbook: Workbook, names: OwnFunctionNames): CalculationNames {
  const sheets = workbook.worksheets.map((worksheet) => worksheet.name.toLowerCase());
  const entries = workbook.definedNames.getAllEntries().map((entry) => ({
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

interface TableModel {
  readonly name?: string;
  readonly columns?: readonly { readonly name: string }[];
  readonly rows?: readonly unknown[];
  readonly headerRow?: boolean;
  readonly tl?: { readonly row: number; readonly col: number };
}

/** The place of each table of the workbook. */
export function tablePlaces(workbook: Workbook): TablePlace[] {
  return workbook.worksheets.flatMap((worksheet) =>
    worksheet.getTables().flatMap((entry) => {
      const { name, columns, rows, headerRow, tl } = (entry as { table?: TableModel }).table ?? {};
      if (name === undefined || tl === undefined) return [];
      const place: TablePlace = {
        name,
        sheet: worksheet.name,
        top: tl.row,
        left: tl.col,
        columns: (columns ?? []).map((column) => column.name),
        dataRows: rows?.length ?? 0,
        hasHeader: headerRow !== false,
      };
      return [place];
    })
  );
}

/** Whether a name's text is a block of more than one cell. */
export function isSeveralCells(texts: readonly string[]): boolean {
  if (texts.length > 1) return true;
  const address = (texts[0] ?? "").replace(/^.*!/, "");
  const block = readAddress(address);
  if (block === undefined) return /[:(]/.test(address);
  return block.top !== block.bottom || block.left !== block.right;
}
