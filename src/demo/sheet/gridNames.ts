import type { Workbook } from "@cj-tech-master/excelts";
import type { IWorkbookData } from "@univerjs/core";
import { fileSpelling } from "../workbook/fileSpelling";
import type { OwnFunctionNames } from "../workbook/ownFunctionNames";
import { typedSpelling } from "./typedSpelling";

/** The key of the defined names in the data of the grid. */
const TITLE = "SHEET_DEFINED_NAME_PLUGIN";
/** The word of the grid for a name that applies to every sheet. */
const EVERY_SHEET = "AllDefaultWorkbook";
const BLOCK = /^(?:'(?:[^']|'')+'|[^'!]+)!\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?$/i;

interface GridName {
  readonly id: string;
  readonly name: string;
  readonly formulaOrRefString: string;
  readonly localSheetId: string;
}

/**
 * The defined names of a workbook in the form of the grid.
 *
 * @param workbook - The workbook.
 * @param sheetIds - The ids of its sheets in the grid, in order.
 * @param names - The names of our functions.
 * @returns The names for the data of the grid.
 */
export function gridNames(
  workbook: Workbook,
  sheetIds: readonly string[],
  names: OwnFunctionNames
): NonNullable<IWorkbookData["resources"]>[number] {
  const entries = workbook.definedNames.getAllEntries().map((entry, index): GridName => {
    const sheetId = entry.localSheetId === undefined ? undefined : sheetIds[entry.localSheetId];
    return {
      id: `name-${index + 1}`,
      name: entry.name,
      formulaOrRefString: typedSpelling(entry.ranges.join(","), names),
      localSheetId: sheetId ?? EVERY_SHEET,
    };
  });
  const data = JSON.stringify(Object.fromEntries(entries.map((entry) => [entry.id, entry])));
  return { name: TITLE, data };
}

function namesOf({ resources }: IWorkbookData): readonly GridName[] {
  const resource = resources?.find(({ name }) => name === TITLE);
  return Object.values(JSON.parse(resource?.data || "{}") as Readonly<Record<string, GridName>>);
}

/**
 * Whether the defined names of the grid are those of other data of it.
 *
 * @param present - The grid's data.
 * @param opened - The grid's data as they were opened.
 */
export function hasSameNames(present: IWorkbookData, opened: IWorkbookData): boolean {
  const texts = (data: IWorkbookData): string[] =>
    namesOf(data)
      .map(({ name, formulaOrRefString, localSheetId }) =>
        [name, formulaOrRefString.replace(/^=/, ""), localSheetId].join(" ")
      )
      .sort();
  return texts(present).join("\n") === texts(opened).join("\n");
}

/**
 * Gives a new workbook the defined names of the grid.
 *
 * @param snapshot - The grid's data.
 * @param workbook - The workbook.
 * @param names - The names of our functions.
 */
export function addFileNames(
  snapshot: IWorkbookData,
  workbook: Workbook,
  names: OwnFunctionNames
): void {
  for (const { name, formulaOrRefString } of namesOf(snapshot)) {
    const means = formulaOrRefString.replace(/^=/, "");
    if (BLOCK.test(means)) workbook.definedNames.add(means, name);
    else workbook.definedNames.addFormula(name, fileSpelling(means, names));
  }
}
