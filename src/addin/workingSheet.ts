import { workingFormula } from "./workingFormula";
import { NotDone, type NewSheet, type SelectedCell } from "./workbookHost";

/**
 * The sheet that lays out how a cell's figure came about, for a reviewer to keep.
 *
 * @param cell - The cell asked about.
 * @returns The sheet: whose working it is, and the formula that spills it.
 * @throws NotDone in a sentence where there is nothing to lay out.
 */
export function workingSheet(cell: SelectedCell): NewSheet {
  const { sheet, address, formula, rowsBelow } = cell;
  if (formula === "")
    throw new NotDone(`${address} holds no formula; select a cell with one of ours.`);
  if (formula.includes("["))
    throw new NotDone(
      `The formula of ${address} names columns of a table; write its cells as A1 addresses to see the working.`
    );
  const working = workingFormula(formula, sheet, rowsBelow);
  if (working === undefined)
    throw new NotDone(
      `The formula of ${address} has no working to lay out; the dates, CHARGES, EFFECTIVERATE, LIABILITY, ESTPENALTY, METHOD and ISSUECOUNT have.`
    );
  return {
    name: `Working ${address}`,
    cells: [
      [`Working of ${sheet}!${address}`],
      ["An estimate, not advice; it follows the cells it points at."],
      [working],
    ],
    widths: [34, 16, 16, 12, 16, 14, 16, 14, 44],
    formats: [],
    choices: [],
    headingRow: 3,
    isTable: false,
  };
}
