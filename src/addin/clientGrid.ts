import { columnLetters } from "../host/cellAddress";
import { CALCULATED_COLUMNS, ENTERED_COLUMNS, fillFormula } from "./clientList";
import type { NewSheet } from "./workbookHost";

const COLUMNS = [...ENTERED_COLUMNS, ...CALCULATED_COLUMNS];
const HEADING_ROW = 3;
/** The cells of the first row with what applies to every client. */
const SETTINGS = {
  "as-of date": "$B$1",
  "assumed rate": "$E$1",
  target: "$H$1",
  cushion: "$K$1",
};

function exampleCell(heading: string): string {
  const index = COLUMNS.findIndex((column) => column.heading === heading);
  if (index < 0) throw new RangeError(`The client list has no column ${heading}.`);
  return `${columnLetters(index + 1)}${String(HEADING_ROW + 1)}`;
}

/**
 * A sheet for a client list: in the first row what applies to every client, then the headings, and below them one example row with
 * its formulas.
 *
 * @param asOf - The as-of date, such as 2026-04-01.
 * @returns The sheet; Excel adds a row with the same formulas when the preparer types below the table.
 */
export function clientGrid(asOf: string): NewSheet {
  return {
    name: "Clients",
    cells: [
      ["As-of date", asOf, "", "Assumed rate", "latest", "", "Target", "full", "", "Cushion", 0],
      [
        "Estimates only. Check each figure against the current official text. The licensed tax professional makes the final decision.",
      ],
      COLUMNS.map(({ heading }) => heading),
      [
        ...ENTERED_COLUMNS.map(({ example }) => example ?? ""),
        ...CALCULATED_COLUMNS.map(
          ({ formula }) => `=${fillFormula(formula, SETTINGS, exampleCell)}`
        ),
      ],
    ],
    widths: COLUMNS.map(({ width }) => width),
    formats: COLUMNS.map(({ format }) => format ?? ""),
    choices: [
      ...ENTERED_COLUMNS.map(({ choices }) => choices ?? []),
      ...CALCULATED_COLUMNS.map(() => []),
    ],
    headingRow: HEADING_ROW,
    isTable: true,
  };
}
