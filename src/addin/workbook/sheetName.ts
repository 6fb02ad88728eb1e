import { NotDone } from "./workbookHost";

/** Excel takes 31 characters; the rest is for a number. */
const MOST_CHARACTERS = 28;
const MOST_SHEETS_OF_A_NAME = 99;

/** A name that Excel takes for a sheet: without the characters it refuses, and short enough for a number after it. */
export function sheetName(wanted: string): string {
  return wanted
    .replace(/[[\]:*?/\\]/g, " ")
    .replace(/^'+|'+$/g, "")
    .slice(0, MOST_CHARACTERS)
    .trim();
}

/**
 * The name of a new sheet.
 *
 * @param wanted - The name, to which a number is added if it is already in use.
 * @param sheets - The names of the sheets of the workbook.
 * @throws NotDone when the name is in use with every number.
 */
export function freeSheetName(wanted: string, sheets: readonly string[]): string {
  const taken = new Set(sheets.map((name) => name.toLowerCase()));
  for (let number = 1; number <= MOST_SHEETS_OF_A_NAME; number += 1) {
    const name = number === 1 ? wanted : `${wanted} ${String(number)}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
  throw new NotDone(`There are too many sheets named ${wanted}. Delete or rename some.`);
}
